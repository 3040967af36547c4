//! Drafts: measures of `recloth.draft` in, pieces out.

use pyo3::{exceptions::PyTypeError, prelude::*, types::PyTuple};
use recloth::{
    Error,
    band::{BandMake, SquareEnds},
    draft::{
        Allowances, CircleSector, Draft, GatheredStrip, Hang, PanelLining, PatchPocket,
        SectionedBand, SkirtPanel, StraightBand,
    },
};

use super::{
    piece::PyPiece,
    read::{whole, word},
};
use crate::door::{number, raise};

/// One of a draft's measures.
struct Measures<'a, 'py>(&'a Bound<'py, PyAny>);

impl<'py> Measures<'_, 'py> {
    fn mm(&self, name: &str) -> PyResult<f64> {
        number(&self.0.getattr(name)?).map_err(|error| self.told(name, &error))
    }

    fn text(&self, name: &str) -> PyResult<String> {
        let text = self.0.getattr(name)?.extract();
        text.map_err(|error| self.told(name, &error))
    }

    /// The error of a measure of the wrong type, with its name.
    fn told(&self, name: &str, error: &PyErr) -> PyErr {
        let py = self.0.py();
        let class = self.0.get_type().name().map(|name| name.to_string());
        let class = class.unwrap_or_default();
        PyTypeError::new_err(format!("draft.{class}: {name}: {}", error.value(py)))
    }

    fn count(&self, name: &'static str) -> PyResult<u32> {
        whole(self.0.py(), "draft", name, self.mm(name)?)
    }

    fn allowances(&self) -> PyResult<Allowances> {
        Ok(Allowances {
            seam: self.mm("seam")?,
            hem: self.mm("hem")?,
        })
    }

    fn skirt_panel(&self) -> PyResult<SkirtPanel> {
        Ok(SkirtPanel {
            name: self.text("name")?,
            panel_width: self.mm("panel_width")?,
            waist: self.mm("waist")?,
            hip: self.mm("hip")?,
            hip_depth: self.mm("hip_depth")?,
            length: self.mm("length")?,
            hem_width: self.mm("hem_width")?,
            darts: self.count("darts")?,
            largest_intake: self.mm("largest_intake")?,
            dart_length: self.mm("dart_length")?,
            side_rise: self.mm("side_rise")?,
            centre: word(self.0.py(), "draft", "centre", &self.text("centre")?)?,
            allowances: self.allowances()?,
        })
    }

    fn draft(&self, kind: &str) -> PyResult<Result<Draft, Error>> {
        Ok(match kind {
            "SkirtPanel" => self.skirt_panel()?.draft(),
            "PanelLining" => PanelLining {
                shell: Measures(&self.0.getattr("shell")?).skirt_panel()?,
                hang: match self.text("hang")?.as_str() {
                    "folded" => Hang::Folded,
                    _ => Hang::Free {
                        hem: self.mm("hem")?,
                    },
                },
                clearance: self.mm("clearance")?,
                ease: self.mm("ease")?,
            }
            .draft(),
            "CircleSector" => CircleSector {
                waist: self.mm("waist")?,
                length: self.mm("length")?,
                fraction: self.mm("fraction")?,
                pieces: self.count("pieces")?,
                allowances: self.allowances()?,
            }
            .draft(),
            "StraightBand" => StraightBand {
                waist: self.mm("waist")?,
                overlap: self.mm("overlap")?,
                depth: self.mm("depth")?,
                turn: self.mm("turn")?,
                make: match self.text("make")?.as_str() {
                    "faced" => BandMake::Faced,
                    _ => BandMake::Folded,
                },
                allowance: self.mm("allowance")?,
            }
            .draft(),
            "SectionedBand" => SectionedBand {
                lengths: self.0.getattr("lengths")?.extract()?,
                depth: self.mm("depth")?,
                top: self.mm("top")?,
                ends: match self.text("ends")?.as_str() {
                    "first" => SquareEnds::First,
                    "last" => SquareEnds::Last,
                    "both" => SquareEnds::Both,
                    _ => SquareEnds::Neither,
                },
                curved: self.0.getattr("curved")?.extract()?,
                allowance: self.mm("allowance")?,
            }
            .draft(),
            "GatheredStrip" => GatheredStrip {
                finished: self.mm("finished")?,
                ratio: self.mm("ratio")?,
                depth: self.mm("depth")?,
                strips: self.count("strips")?,
                allowances: self.allowances()?,
            }
            .draft(),
            _ => PatchPocket {
                width: self.mm("width")?,
                depth: self.mm("depth")?,
                corner_radius: self.mm("corner_radius")?,
                allowances: self.allowances()?,
            }
            .draft(),
        })
    }
}

/// The pieces and the doubts of a draft, one of the classes of `recloth.draft`.
#[pyfunction]
pub(crate) fn draft<'py>(measures: &Bound<'py, PyAny>) -> PyResult<(Bound<'py, PyTuple>, u64)> {
    let py = measures.py();
    let kind = measures.get_type().name()?.to_string();
    let draft = Measures(measures).draft(&kind)?;
    let draft = draft.map_err(|error| raise(py, &format!("draft.{kind}"), &error))?;
    let pieces: Vec<PyPiece> = draft.pieces.into_iter().map(PyPiece::from).collect();
    Ok((PyTuple::new(py, pieces)?, draft.doubts))
}
