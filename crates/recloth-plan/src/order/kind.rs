//! Kinds of step, why some cannot be undone, and what to do before those.

use serde::Serialize;

macro_rules! kinds {
    ($($(#[$doc:meta])* $kind:ident = $name:literal;)*) => {
        /// What kind of step it is; the trade's rules hold between kinds.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
        #[non_exhaustive]
        pub enum Kind {
            $(#[doc = $name] #[serde(rename = $name)] $kind,)*
        }

        impl Kind {
            /// Every kind, in the order in which a job usually meets them.
            pub const ALL: &[Kind] = &[$(Kind::$kind),*];

            /// The kind's name, as a brief writes it.
            pub const fn name(self) -> &'static str {
                match self { $(Kind::$kind => $name,)* }
            }
        }
    };
}

kinds! {
    Record = "record";
    Unpick = "unpick";
    Strip = "take off";
    Swatch = "swatch";
    Bath = "bath";
    Shrink = "shrink";
    Measure = "measure";
    Cut = "cut";
    CutLining = "cut lining";
    Fuse = "fuse";
    Staystitch = "staystitch";
    SewDarts = "sew darts";
    Loops = "loops";
    Facing = "facing";
    Shoulders = "shoulders";
    BagOut = "bag out";
    Join = "join";
    Clip = "clip";
    Turn = "turn";
    Press = "press";
    Sides = "sides";
    MeasureWaist = "measure waist";
    CutBand = "cut band";
    FuseBand = "fuse band";
    CloseBand = "close band";
    Topstitch = "topstitch";
    TryOn = "try on";
    CutOpening = "cut opening";
    Buttonhole = "buttonhole";
    Slit = "slit";
    Button = "button";
    Elastic = "elastic";
    Hang = "hang";
    LevelHem = "level hem";
    Hem = "hem";
}

impl Kind {
    /// The kind of this name.
    pub fn from_name(name: &str) -> Option<Kind> {
        Kind::ALL.iter().copied().find(|kind| kind.name() == name)
    }

    /// Why the step cannot be undone, where it cannot.
    pub const fn no_return(self) -> Option<&'static str> {
        Some(match self {
            Kind::Unpick => "once apart, the garment no longer shows how it was made",
            Kind::Bath => "the colour, and whatever the bath took from the fibre, stay",
            Kind::Shrink => "cloth that has shrunk does not come back",
            Kind::Cut | Kind::CutLining | Kind::CutBand => {
                "cut is cut, and this cloth cannot be bought again"
            }
            Kind::Fuse | Kind::FuseBand => "fused interfacing does not come off cleanly",
            Kind::Clip => "a clip too deep shows on the right side",
            Kind::CutOpening => "an opening cut too large stays too large",
            Kind::Slit => "a slit buttonhole stays where it is",
            Kind::LevelHem => "what is levelled off is gone",
            _ => return None,
        })
    }

    /// What to test, count or try on before the step.
    pub const fn before(self) -> &'static [&'static str] {
        match self {
            Kind::Bath => &[
                "Put a swatch of the same cloth, and a snip of each thread and trim that stays on, through the same \
                 bath. Rinse, dry, look at it in daylight and pull at it.",
            ],
            Kind::Shrink => {
                &["Wash and dry a swatch with its lengths marked, and measure it again."]
            }
            Kind::Cut => &[
                "Lay out every piece before the first cut: count them, left and right hands, grain, right side up, \
                 clear of the flaws.",
            ],
            Kind::CutLining => &[
                "Check that the shell's darts are still open, and that you know which way the lining's pleats or \
                 darts will lie.",
            ],
            Kind::CutBand => {
                &["Try on with darts and side seams basted, and measure the waist edge as sewn."]
            }
            Kind::Fuse | Kind::FuseBand => {
                &["Fuse a scrap first: look for bubbles, shine and a change of colour."]
            }
            Kind::Clip => {
                &["See that the staystitching is in; stop the points two threads short of it."]
            }
            Kind::CutOpening => &["Try on with the seams basted, and mark the edge on the body."],
            Kind::Slit => &[
                "Work one buttonhole on a scrap of the same layers and try the button through it; set a pin at each \
                 end so that the blade stops.",
            ],
            Kind::LevelHem => {
                &["Try on in the shoes it will be worn with, and mark the hem from the floor."]
            }
            _ => &[],
        }
    }
}
