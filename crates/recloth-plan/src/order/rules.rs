//! The trade's rules of what comes first.

use super::Kind;

/// One rule of the trade: a step of the first kind comes before one of the second.
pub(super) struct Rule(pub(super) Kind, pub(super) Kind, pub(super) &'static str);

/// Common practice, no source; the reasons are given so that they can be judged.
pub(super) const RULES: &[Rule] = &[
    Rule(
        Kind::Record,
        Kind::Unpick,
        "note and mark grain, face and place of each part while it still shows them",
    ),
    Rule(
        Kind::Unpick,
        Kind::Strip,
        "a part is reached when the seams round it are open",
    ),
    Rule(
        Kind::Unpick,
        Kind::Measure,
        "a panel is measured flat and single",
    ),
    Rule(
        Kind::Strip,
        Kind::Bath,
        "take off first what cannot bear the bath or would leave a resist in it",
    ),
    Rule(
        Kind::Swatch,
        Kind::Bath,
        "a swatch shows what the bath does while it can still be left out",
    ),
    Rule(
        Kind::Swatch,
        Kind::Shrink,
        "a washed swatch shows how much will be lost",
    ),
    Rule(
        Kind::Unpick,
        Kind::Bath,
        "seams and hems left closed take the bath unevenly",
    ),
    Rule(
        Kind::Unpick,
        Kind::Shrink,
        "the old lining and thread shrink by another amount",
    ),
    Rule(Kind::Bath, Kind::Measure, "a hot bath shrinks the cloth"),
    Rule(
        Kind::Shrink,
        Kind::Measure,
        "only cloth that has done shrinking has its true size",
    ),
    Rule(
        Kind::Measure,
        Kind::Cut,
        "what is left decides what can be cut",
    ),
    Rule(
        Kind::Measure,
        Kind::CutLining,
        "what is left decides what can be cut",
    ),
    Rule(
        Kind::Shrink,
        Kind::Cut,
        "cloth cut before it has shrunk makes a garment that shrinks",
    ),
    Rule(
        Kind::Shrink,
        Kind::CutLining,
        "cloth cut before it has shrunk makes a garment that shrinks",
    ),
    Rule(Kind::Bath, Kind::Cut, "a hot bath shrinks the cloth"),
    Rule(
        Kind::Bath,
        Kind::Fuse,
        "the adhesive of an interfacing resists the dye and lets go in a hot bath",
    ),
    Rule(Kind::Bath, Kind::Elastic, "a hot bath spoils elastic"),
    Rule(
        Kind::Bath,
        Kind::Button,
        "buttons may crack or stain in the bath",
    ),
    Rule(
        Kind::Cut,
        Kind::Fuse,
        "interfacing is cut by the piece it backs",
    ),
    Rule(
        Kind::Cut,
        Kind::Staystitch,
        "a cut curve stretches as soon as it is handled: hold it at once",
    ),
    Rule(Kind::Cut, Kind::SewDarts, "a dart is sewn in the cut piece"),
    Rule(
        Kind::Cut,
        Kind::Loops,
        "loops are made of what the pieces leave",
    ),
    Rule(Kind::Cut, Kind::Join, "seams join cut pieces"),
    Rule(Kind::Cut, Kind::Shoulders, "seams join cut pieces"),
    Rule(
        Kind::Cut,
        Kind::Facing,
        "a facing is cut by the edge it faces",
    ),
    Rule(
        Kind::Cut,
        Kind::Press,
        "only a cut edge can be turned and pressed",
    ),
    Rule(Kind::Cut, Kind::Elastic, "elastic goes into a sewn casing"),
    Rule(
        Kind::CutLining,
        Kind::BagOut,
        "shell and lining are sewn to each other",
    ),
    Rule(
        Kind::CutLining,
        Kind::SewDarts,
        "the lining is cut by the flat shell piece, its darts still open",
    ),
    Rule(
        Kind::SewDarts,
        Kind::MeasureWaist,
        "a waist edge has its length only when its darts are sewn",
    ),
    Rule(
        Kind::SewDarts,
        Kind::Join,
        "darts are sewn while the piece lies flat",
    ),
    Rule(
        Kind::MeasureWaist,
        Kind::CutBand,
        "the band is cut to the waist edge as sewn",
    ),
    Rule(
        Kind::Join,
        Kind::MeasureWaist,
        "every seam joined takes its own small share of the waist",
    ),
    Rule(
        Kind::Fuse,
        Kind::Join,
        "interfacing goes on while the piece lies flat and single",
    ),
    Rule(
        Kind::Fuse,
        Kind::Shoulders,
        "interfacing goes on while the piece lies flat and single",
    ),
    Rule(
        Kind::Staystitch,
        Kind::Shoulders,
        "a curve is held before it is handled at the machine",
    ),
    Rule(
        Kind::Loops,
        Kind::Facing,
        "the facing seam is what catches the loops",
    ),
    Rule(
        Kind::Staystitch,
        Kind::Join,
        "a curve is held before it is handled at the machine",
    ),
    Rule(
        Kind::Staystitch,
        Kind::Clip,
        "the staystitching is what stops a clip",
    ),
    Rule(
        Kind::Facing,
        Kind::Clip,
        "clips are made to the line of a sewn seam",
    ),
    Rule(
        Kind::BagOut,
        Kind::Clip,
        "clips are made to the line of a sewn seam",
    ),
    Rule(
        Kind::Clip,
        Kind::Turn,
        "an unclipped curve does not turn flat",
    ),
    Rule(Kind::Turn, Kind::Press, "an edge is pressed as it will lie"),
    Rule(
        Kind::Press,
        Kind::Topstitch,
        "topstitching fixes the edge as it was pressed",
    ),
    Rule(
        Kind::Shoulders,
        Kind::BagOut,
        "with the shoulders sewn the garment can still be turned through its sides",
    ),
    Rule(Kind::BagOut, Kind::Turn, "bagged edges are sewn inside out"),
    Rule(
        Kind::Turn,
        Kind::Sides,
        "the open sides are the way through which it is turned",
    ),
    Rule(
        Kind::CutBand,
        Kind::FuseBand,
        "interfacing is cut by the piece it backs",
    ),
    Rule(
        Kind::Bath,
        Kind::FuseBand,
        "the adhesive of an interfacing resists the dye and lets go in a hot bath",
    ),
    Rule(
        Kind::FuseBand,
        Kind::CloseBand,
        "interfacing goes on while the piece lies flat and single",
    ),
    Rule(
        Kind::CutBand,
        Kind::CloseBand,
        "the band is closed round the waist when it is cut and sewn on",
    ),
    Rule(
        Kind::CloseBand,
        Kind::Buttonhole,
        "a buttonhole is worked through the finished layers",
    ),
    Rule(
        Kind::Topstitch,
        Kind::Buttonhole,
        "the edge's stitching comes first: the hole is placed from it",
    ),
    Rule(
        Kind::Buttonhole,
        Kind::Slit,
        "slit before it is worked, the hole frays",
    ),
    Rule(
        Kind::Slit,
        Kind::Button,
        "the button is placed through the slit hole",
    ),
    Rule(
        Kind::Join,
        Kind::TryOn,
        "there is something to try on when the seams are basted",
    ),
    Rule(
        Kind::TryOn,
        Kind::CutOpening,
        "neck and armhole are cut where the body has them",
    ),
    Rule(
        Kind::TryOn,
        Kind::LevelHem,
        "a hem is level on the body, not on the table",
    ),
    Rule(
        Kind::CloseBand,
        Kind::Hang,
        "a skirt hangs from its finished band",
    ),
    Rule(
        Kind::Hang,
        Kind::LevelHem,
        "cloth off the straight drops for a day",
    ),
    Rule(
        Kind::LevelHem,
        Kind::Hem,
        "the hem is turned on the level edge",
    ),
];
