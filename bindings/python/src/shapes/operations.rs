//! Operations on pieces: what a cutter does with paper, scissors and tape.

use kurbo::Line;
use pyo3::{
    prelude::*,
    types::{PyString, PyTuple},
};
use recloth::{
    Error,
    outline::{Facing, NewSeam, Opening, Piece, Place, Slash},
};

use super::{
    piece::{PyPiece, curve},
    read::{Pair, data, invalid, made, numbers},
};
use crate::door::number;

impl PyPiece {
    /// What an operation made of the piece, or its error as one of this piece.
    pub(crate) fn done(
        &self,
        py: Python<'_>,
        function: &str,
        made: Result<Piece, Error>,
    ) -> PyResult<PyPiece> {
        made.map(PyPiece::from)
            .map_err(|error| self.failed(py, function, &error))
    }

    /// A place: `Place`, or an edge by name or index with a distance.
    pub(crate) fn read_place(
        &self,
        function: &str,
        argument: &'static str,
        place: &Bound<'_, PyAny>,
    ) -> PyResult<Place> {
        let place = data(place.py())?.call_method1("place", (place, argument))?;
        let edge = self.one(function, argument, &place.getattr("edge")?)?;
        let distance = place.getattr("distance")?.extract()?;
        Ok(Place { edge, distance })
    }

    fn one_edge(
        &self,
        function: &str,
        argument: &'static str,
        edge: &Bound<'_, PyAny>,
    ) -> PyResult<usize> {
        let edges = self.indices(function, argument, edge)?;
        match edges.as_slice() {
            [one] => Ok(*one),
            _ => Err(invalid(edge.py(), function, argument, "one edge is wanted")),
        }
    }
}

/// A point that is given.
fn point(value: &Bound<'_, PyAny>, argument: &str) -> PyResult<Pair> {
    let point = data(value.py())?.call_method1("point", (value, argument))?;
    point.extract()
}

/// A line by two points that are given.
fn line(start: &Bound<'_, PyAny>, end: &Bound<'_, PyAny>) -> PyResult<Line> {
    Ok(Line::new(point(start, "start")?, point(end, "end")?))
}

#[pymethods]
impl PyPiece {
    /// The place on the outline nearest to a point.
    ///
    /// Parameters
    /// ----------
    /// point : (x, y)
    ///     the point (mm)
    ///
    /// Returns
    /// -------
    /// Place
    ///     where on which edge it is, and how far off the point lies
    fn place<'py>(&self, point: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let py = point.py();
        let (x, y) = self::point(point, "point")?;
        for (name, value) in [("x", x), ("y", y)] {
            Error::check(name, value, -1e6, 1e6)
                .map_err(|error| crate::door::raise(py, "Piece.place", &error))?;
        }
        let (place, off) = self.piece.place((x, y));
        made(py, "Place", (place.edge, place.distance, off))
    }

    /// Turns a dart about its point: it is closed where it is, by the shares asked, and opens elsewhere.
    ///
    /// Parameters
    /// ----------
    /// dart : str
    ///     its name
    /// openings : list of Opening, or of (name, at, share)
    ///     where it opens, and its share of the angle; what they leave of 1 stays where it is
    ///
    /// Raises
    /// ------
    /// ReclothError
    ///     no such dart, legs of different lengths, an opening within its mouth or a fold, a cut that would
    ///     run through another dart or a buttonhole, parts that would lie over each other
    fn turn_dart(&self, dart: &str, openings: &Bound<'_, PyAny>) -> PyResult<PyPiece> {
        const TURN: &str = "Piece.turn_dart";
        let py = openings.py();
        let listed = data(py)?.call_method1("opening_list", (openings,))?;
        let mut read = Vec::new();
        for opening in listed.try_iter()? {
            let opening = opening?;
            read.push(Opening {
                name: opening.getattr("name")?.extract()?,
                at: self.read_place(TURN, "at", &opening.getattr("at")?)?,
                share: opening.getattr("share")?.extract()?,
            });
        }
        self.done(py, TURN, self.piece.turn_dart(dart, &read))
    }

    /// Closes a dart and lets the piece flare instead: from the dart's point it is cut to a place on the
    /// outline, which opens by the dart's angle and is bridged straight.
    ///
    /// Parameters
    /// ----------
    /// dart : str
    ///     its name
    /// at : Place, or (edge, distance)
    ///     where it flares
    fn close_dart(&self, dart: &str, at: &Bound<'_, PyAny>) -> PyResult<PyPiece> {
        const CLOSE: &str = "Piece.close_dart";
        let at_place = self.read_place(CLOSE, "at", at)?;
        self.done(at.py(), CLOSE, self.piece.close_dart(dart, at_place))
    }

    /// Opens a dart where there is none: cut from ``at`` to its point and on to ``opposite``, one side is
    /// turned about the point; at ``opposite`` the edge loses what lies over itself.
    ///
    /// Parameters
    /// ----------
    /// name : str
    ///     name of the new dart
    /// point : (x, y)
    ///     its point, within the piece (mm)
    /// at : Place, or (edge, distance)
    ///     where it opens
    /// intake : float
    ///     its width there (mm), 0.001 up to twice its leg
    /// opposite : Place, or (edge, distance)
    ///     where the other side gives way
    fn open_dart(
        &self,
        name: &str,
        point: &Bound<'_, PyAny>,
        at: &Bound<'_, PyAny>,
        #[pyo3(from_py_with = number)] intake: f64,
        opposite: &Bound<'_, PyAny>,
    ) -> PyResult<PyPiece> {
        const OPEN: &str = "Piece.open_dart";
        let py = at.py();
        let point = self::point(point, "point")?;
        let at = self.read_place(OPEN, "at", at)?;
        let opposite = self.read_place(OPEN, "opposite", opposite)?;
        self.done(
            py,
            OPEN,
            self.piece.open_dart(name, point, at, intake, opposite),
        )
    }

    /// Gives the mouth of a dart its cap: folded and pressed onto the edge ``onto``, the dart ends in that
    /// edge's line.
    ///
    /// Parameters
    /// ----------
    /// dart : str
    ///     its name
    /// onto : str or int
    ///     the edge before its mouth, or that after it
    fn cap_dart(&self, dart: &str, onto: &Bound<'_, PyAny>) -> PyResult<PyPiece> {
        const CAP: &str = "Piece.cap_dart";
        let edge = self.one_edge(CAP, "onto", onto)?;
        self.done(onto.py(), CAP, self.piece.cap_dart(dart, edge))
    }

    /// Cuts the piece in two along a line or curve that crosses its outline twice.
    ///
    /// Parameters
    /// ----------
    /// start, end : (x, y)
    ///     ends of the cut (mm); what lies outside the piece is not used
    /// name : str
    ///     name of the seam's edge in both parts
    /// allowance : float
    ///     its seam allowance in both (mm), 0 to 1000
    /// notches : list of float
    ///     where both are notched, from where the cut enters (mm)
    /// bulge, steer
    ///     as of :class:`Edge`: 0 and None for a straight cut
    ///
    /// Returns
    /// -------
    /// tuple of two Piece
    ///     the part to the left of the cut, and that to its right
    #[pyo3(signature = (start, end, *, name="cut", allowance=0.0, notches=None, bulge=0.0, steer=None),
        text_signature = "($self, start, end, *, name='cut', allowance=0.0, notches=(), bulge=0.0, steer=None)")]
    #[expect(clippy::too_many_arguments, reason = "named in Python")]
    fn split(
        &self,
        py: Python<'_>,
        start: &Bound<'_, PyAny>,
        end: &Bound<'_, PyAny>,
        name: &str,
        #[pyo3(from_py_with = number)] allowance: f64,
        notches: Option<&Bound<'_, PyAny>>,
        #[pyo3(from_py_with = number)] bulge: f64,
        steer: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<(PyPiece, PyPiece)> {
        const SPLIT: &str = "Piece.split";
        let steer = steer.map(|steer| data(py)?.call_method1("pair", (steer, "steer"))?.extract());
        let cut = curve(
            point(start, "start")?,
            point(end, "end")?,
            bulge,
            steer.transpose()?,
        );
        let notches = match notches {
            Some(notches) => numbers(notches, SPLIT, "notches")?,
            None => Vec::new(),
        };
        let seam = NewSeam {
            name: name.into(),
            allowance,
            notches,
        };
        let parts = self.piece.split(&cut, &seam);
        let [left, right] = parts.map_err(|error| self.failed(py, SPLIT, &error))?;
        Ok((left.into(), right.into()))
    }

    /// Slashes the piece across and spreads it: for flare from a hinge, for gathers or pleats parallel.
    ///
    /// Parameters
    /// ----------
    /// slashes : list of Slash, or of (open, hinge, open_by, hinge_by)
    ///     side by side; a slash opens by ``hinge_by`` all along and by the rest towards its start
    fn slash_and_spread(&self, slashes: &Bound<'_, PyAny>) -> PyResult<PyPiece> {
        const SPREAD: &str = "Piece.slash_and_spread";
        let py = slashes.py();
        let listed = data(py)?.call_method1("slash_list", (slashes,))?;
        let mut read = Vec::new();
        for slash in listed.try_iter()? {
            let slash = slash?;
            read.push(Slash {
                open: self.read_place(SPREAD, "open", &slash.getattr("open")?)?,
                hinge: self.read_place(SPREAD, "hinge", &slash.getattr("hinge")?)?,
                open_by: slash.getattr("open_by")?.extract()?,
                hinge_by: slash.getattr("hinge_by")?.extract()?,
            });
        }
        self.done(py, SPREAD, self.piece.slash_and_spread(&read))
    }

    /// Lays another piece along an edge of this one and makes one piece of both, without the seam.
    ///
    /// Parameters
    /// ----------
    /// edge : str or int
    ///     the edge of this piece
    /// other : Piece
    ///     the other piece; it is turned and shifted, never stretched
    /// other_edge : str or int
    ///     its edge
    /// tolerance : float
    ///     how much the edges may differ (mm), 0 to 1000
    ///
    /// Returns
    /// -------
    /// Joined
    ///     the piece, and the farthest that both edges lie apart
    #[pyo3(signature = (edge, other, other_edge, tolerance=0.5))]
    fn join<'py>(
        &self,
        edge: &Bound<'py, PyAny>,
        other: &Bound<'py, PyPiece>,
        other_edge: &Bound<'py, PyAny>,
        #[pyo3(from_py_with = number)] tolerance: f64,
    ) -> PyResult<Bound<'py, PyAny>> {
        const JOIN: &str = "Piece.join";
        let py = edge.py();
        let other = other.get();
        let mine = self.one_edge(JOIN, "edge", edge)?;
        let theirs = other.one_edge(JOIN, "other_edge", other_edge)?;
        let joined = self.piece.join(mine, &other.piece, theirs, tolerance);
        let joined = joined.map_err(|error| self.failed(py, JOIN, &error))?;
        made(py, "Joined", (PyPiece::from(joined.piece), joined.gap))
    }

    /// The piece cut larger or smaller, so that after the wash it is what it is now.
    ///
    /// Parameters
    /// ----------
    /// along_pct, across_pct : float
    ///     change along the grain and across it (%), -90 to 100; minus is shrinkage
    fn scale_for_change(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] along_pct: f64,
        #[pyo3(from_py_with = number)] across_pct: f64,
    ) -> PyResult<PyPiece> {
        let scaled = self.piece.scale_for_change(along_pct, across_pct);
        self.done(py, "Piece.scale_for_change", scaled)
    }

    /// Folds the piece along an axis from corner to corner, compares its halves and gives their middle.
    ///
    /// Parameters
    /// ----------
    /// start, end : (x, y)
    ///     the axis, between two corners (mm)
    /// tolerance : float
    ///     how far the halves may differ (mm), 0 to 1000: more is refused, with where and by how much
    ///
    /// Returns
    /// -------
    /// Symmetry
    fn symmetrise<'py>(
        &self,
        start: &Bound<'py, PyAny>,
        end: &Bound<'py, PyAny>,
        #[pyo3(from_py_with = number)] tolerance: f64,
    ) -> PyResult<Bound<'py, PyAny>> {
        let py = start.py();
        let halves = self.piece.symmetrise(line(start, end)?, tolerance);
        let halves = halves.map_err(|error| self.failed(py, "Piece.symmetrise", &error))?;
        made(
            py,
            "Symmetry",
            (
                PyPiece::from(halves.half),
                halves.largest,
                halves.edge,
                PyTuple::new(py, &halves.alone)?,
            ),
        )
    }

    /// Moves edges parallel to themselves; their neighbours run on or are cut off.
    ///
    /// Parameters
    /// ----------
    /// edges : str, int, or list of them
    ///     which
    /// by : float
    ///     how far (mm), -1000 to 1000: outward, or inward where negative
    fn shift_edges(
        &self,
        edges: &Bound<'_, PyAny>,
        #[pyo3(from_py_with = number)] by: f64,
    ) -> PyResult<PyPiece> {
        const SHIFT: &str = "Piece.shift_edges";
        let listed = self.indices(SHIFT, "edges", edges)?;
        self.done(edges.py(), SHIFT, self.piece.shift_edges(&listed, by))
    }

    /// Lengthens the piece at a line across it, or shortens it: as paper is cut at "lengthen or shorten
    /// here" and spread, or folded over. What lies to the left of the line stays. Edges that cross it are
    /// drawn anew from end to end, so that the widths at both ends stay.
    ///
    /// Parameters
    /// ----------
    /// start, end : (x, y)
    ///     two points of the line (mm); it has no ends
    /// by : float
    ///     how much (mm), -10 000 to 10 000; negative shortens
    fn extend(
        &self,
        start: &Bound<'_, PyAny>,
        end: &Bound<'_, PyAny>,
        #[pyo3(from_py_with = number)] by: f64,
    ) -> PyResult<PyPiece> {
        let line = line(start, end)?;
        self.done(start.py(), "Piece.extend", self.piece.extend(line, by))
    }

    /// The facing of edges that follow each other around the piece.
    ///
    /// Parameters
    /// ----------
    /// edges : str, int, or list of them
    ///     which, in the order of the piece
    /// depth : float
    ///     how deep it is (mm), 1 to 1000
    /// name : str
    ///     name of the facing
    /// roll : float
    ///     by how much its faced edges lie within (mm), 0 to 10
    /// inner_allowance : float
    ///     allowance of its inner edge (mm), 0 to 1000
    #[pyo3(signature = (edges, depth, *, name=None, roll=0.0, inner_allowance=0.0))]
    fn facing(
        &self,
        edges: &Bound<'_, PyAny>,
        #[pyo3(from_py_with = number)] depth: f64,
        name: Option<&Bound<'_, PyString>>,
        #[pyo3(from_py_with = number)] roll: f64,
        #[pyo3(from_py_with = number)] inner_allowance: f64,
    ) -> PyResult<PyPiece> {
        const FACING: &str = "Piece.facing";
        let name = match name {
            Some(name) => name.extract()?,
            None => format!("{} facing", self.piece.name()),
        };
        let listed = self.indices(FACING, "edges", edges)?;
        let facing = Facing {
            name,
            depth,
            roll,
            inner_allowance,
        };
        self.done(edges.py(), FACING, self.piece.facing(&listed, &facing))
    }
}
