//! The measures of any draft.

use super::{
    Binding, CircleSector, DartedSkirt, Draft, EdgeBand, GatheredStrip, GoredSkirt, NeckTop,
    OffCentreFront, PanelLining, PatchPocket, Pinafore, PuffedSleeve, RecutSleeve, SectionedBand,
    ShapedBand, SkirtPanel, Sleeve, StraightBand, TieredSkirt, WrapSkirt,
};
use crate::Error;

macro_rules! measures {
    ($($kind:ident),* $(,)?) => {
        /// The measures of any draft, by its kind: for a list of several, or one that is read. As JSON
        /// `{"patch_pocket": {"width": 150.0, ...}}`.
        #[derive(Clone, Debug, PartialEq)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
        #[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
        #[non_exhaustive]
        pub enum Measures {
            $(
                #[doc = concat!("Of a [`", stringify!($kind), "`].")]
                $kind($kind),
            )*
        }

        impl Measures {
            /// Drafts what these are the measures of.
            ///
            /// # Errors
            /// As the `draft` of its kind.
            pub fn draft(&self) -> Result<Draft, Error> {
                match self {
                    $(Measures::$kind(measures) => measures.draft(),)*
                }
            }
        }
    };
}

measures!(
    Binding,
    CircleSector,
    DartedSkirt,
    EdgeBand,
    GatheredStrip,
    GoredSkirt,
    NeckTop,
    OffCentreFront,
    PanelLining,
    PatchPocket,
    Pinafore,
    PuffedSleeve,
    RecutSleeve,
    SectionedBand,
    ShapedBand,
    SkirtPanel,
    Sleeve,
    StraightBand,
    TieredSkirt,
    WrapSkirt,
);
