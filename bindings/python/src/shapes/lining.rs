//! The lining of a piece.

use pyo3::{
    prelude::*,
    types::{PyString, PyTuple},
};
use recloth::{
    Error,
    outline::{EdgeBy, Lined, Lining, LiningHem},
};

use super::{
    piece::PyPiece,
    read::{data, made, spelled, tuple, word},
};
use crate::door::{number, raise};

const LINING: &str = "Piece.lining";

impl PyPiece {
    /// Edges by name or index, each with a number.
    fn edge_widths(
        &self,
        argument: &'static str,
        given: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Vec<EdgeBy>> {
        let Some(given) = given else {
            return Ok(Vec::new());
        };
        let pairs: Vec<(Bound<'_, PyAny>, f64)> = data(given.py())?
            .call_method1("edge_widths", (given, LINING, argument))?
            .extract()?;
        let read = |(edge, by): &(Bound<'_, PyAny>, f64)| {
            let edge = self.one(LINING, argument, edge)?;
            Ok(EdgeBy { edge, by: *by })
        };
        pairs.iter().map(read).collect()
    }
}

#[pymethods]
impl PyPiece {
    /// The lining of the piece: its seam lines less the facings, eased, with pleats for room, ended at the
    /// hem as asked, and cut for what its own cloth will do in the wash. A dart to be closed is closed
    /// first, by ``close_dart``.
    ///
    /// Parameters
    /// ----------
    /// name : str
    ///     name of the lining
    /// cloth : str
    ///     name of its cloth
    /// facings, ease, pleats : dict of edge to float, or list of pairs
    ///     faced edges and how deep their facing is; edges let out for ease, and by how much; straight
    ///     edges, on a fold or not, beside which a pleat is laid, and its depth (mm), 0 to 1000
    /// hem : str
    ///     "free": with a hem of its own; "jump": sewn to the top of the shell's hem, over which it hangs
    ///     in a fold; "level": ended where the shell is, as a seam
    /// depth : float
    ///     of a jump: finished depth of the shell's hem (mm), 0 to 1000
    /// clearance : float
    ///     free, how much shorter it is than the shell; of a jump, how far its fold lies above the shell's
    ///     edge, less than the depth (mm), 0 to 1000
    /// hem_allowance : float
    ///     free, the allowance of its own hem (mm), 0 to 1000
    /// darts : str
    ///     "tucks": left open and laid, two notches in place of the mark; "sewn": as in the shell
    /// allowance : float
    ///     of its seams (mm), 0 to 1000
    /// shell_change_pct, lining_change_pct : (float, float)
    ///     what the shell, as it is drawn, and the lining's cloth will do in the wash, along the grain and
    ///     across it (%), -90 to 100; minus is shrinkage
    ///
    /// Returns
    /// -------
    /// Lined
    ///     the lining, and what to walk
    #[pyo3(
        signature = (name=None, *, cloth="lining", facings=None, ease=None, pleats=None, hem="level", depth=0.0,
            clearance=0.0, hem_allowance=0.0, darts="tucks", allowance=10.0, shell_change_pct=None,
            lining_change_pct=None),
        text_signature = "($self, name=None, *, cloth='lining', facings=None, ease=None, pleats=None, hem='level', depth=0.0, clearance=0.0, hem_allowance=0.0, darts='tucks', allowance=10.0, shell_change_pct=(0.0, 0.0), lining_change_pct=(0.0, 0.0))"
    )]
    #[expect(clippy::too_many_arguments, reason = "named in Python")]
    fn lining<'py>(
        &self,
        py: Python<'py>,
        name: Option<&Bound<'py, PyString>>,
        cloth: &str,
        facings: Option<&Bound<'py, PyAny>>,
        ease: Option<&Bound<'py, PyAny>>,
        pleats: Option<&Bound<'py, PyAny>>,
        hem: &str,
        #[pyo3(from_py_with = number)] depth: f64,
        #[pyo3(from_py_with = number)] clearance: f64,
        #[pyo3(from_py_with = number)] hem_allowance: f64,
        darts: &str,
        #[pyo3(from_py_with = number)] allowance: f64,
        shell_change_pct: Option<&Bound<'py, PyAny>>,
        lining_change_pct: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let name = match name {
            Some(name) => name.extract()?,
            None => format!("{} lining", self.piece.name()),
        };
        let asked = Lining {
            name,
            cloth: cloth.to_owned(),
            facings: self.edge_widths("facings", facings)?,
            ease: self.edge_widths("ease", ease)?,
            pleats: self.edge_widths("pleats", pleats)?,
            hem: read_hem(py, LINING, hem, [depth, clearance, hem_allowance])?,
            darts: word(py, LINING, "darts", darts)?,
            allowance,
            shell_change_pct: change(py, LINING, "shell_change_pct", shell_change_pct)?,
            lining_change_pct: change(py, LINING, "lining_change_pct", lining_change_pct)?,
        };
        let lined = self.piece.lining(&asked);
        let lined = lined.map_err(|error| self.failed(py, LINING, &error))?;
        lined_data(py, lined)
    }
}

/// How a lining may end at the hem.
const HEMS: (&str, &str, &str) = ("free", "jump", "level");

/// How a lining ends at the hem, from its word and `depth`, `clearance` and `hem_allowance`, those that this hem does not use too.
pub(crate) fn read_hem(
    py: Python<'_>,
    function: &str,
    hem: &str,
    [depth, clearance, allowance]: [f64; 3],
) -> PyResult<LiningHem> {
    let lengths = [
        ("depth", depth),
        ("clearance", clearance),
        ("hem_allowance", allowance),
    ];
    for (argument, value) in lengths {
        Error::check(argument, value, 0.0, 1e3).map_err(|error| raise(py, function, &error))?;
    }
    let hem = data(py)?.call_method1("word", (hem, HEMS, function, "hem"))?;
    Ok(match hem.extract::<&str>()? {
        "free" => LiningHem::Free {
            clearance,
            allowance,
        },
        "jump" => LiningHem::Jump { depth, clearance },
        _ => LiningHem::Level,
    })
}

/// What a cloth does in the wash, along and across (%); nothing if it is not given.
pub(crate) fn change(
    py: Python<'_>,
    function: &str,
    argument: &str,
    given: Option<&Bound<'_, PyAny>>,
) -> PyResult<[f64; 2]> {
    let Some(given) = given else {
        return Ok([0.0; 2]);
    };
    let two = data(py)?.call_method1("two", (given, function, argument))?;
    let (along, across): (f64, f64) = two.extract()?;
    Ok([along, across])
}

/// A lining and its seams.
pub(crate) fn lined_data(py: Python<'_>, lined: Lined) -> PyResult<Bound<'_, PyAny>> {
    let seams = lined.seams.iter().map(|seam| {
        let edges = PyTuple::new(py, &seam.edges)?;
        let lengths = (seam.length, seam.other_length, seam.difference);
        let along = spelled(seam.along);
        made(
            py,
            "LiningSeam",
            (seam.shell, edges, along, lengths.0, lengths.1, lengths.2),
        )
    });
    let seams = tuple(py, seams)?;
    let pieces = (PyPiece::from(lined.piece), PyPiece::from(lined.finished));
    made(py, "Lined", (pieces.0, pieces.1, seams))
}
