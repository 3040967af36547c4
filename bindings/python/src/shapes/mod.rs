//! The doors of shapes, written by hand: pieces, panels, lays and plans as immutable classes.
//!
//! Plain data (edges, parts, placements) are dataclasses of `recloth._shapes`; what is checked or
//! computed is a class here that holds the Rust value.

mod cloth;
mod copy_edge;
mod cut_line;
mod draft;
mod lay;
mod lining;
mod notches;
mod operations;
mod panel;
mod piece;
mod plan;
mod read;
mod true_up;

use pyo3::prelude::*;

/// Adds every class and function of shapes.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_class::<piece::PyPiece>()?;
    module.add_class::<draft::PyDraft>()?;
    module.add_class::<cut_line::PyCutLine>()?;
    module.add_class::<cloth::PyPanel>()?;
    module.add_class::<panel::PyUsablePanel>()?;
    module.add_class::<panel::PyUsablePart>()?;
    module.add_class::<panel::PyPanelRectangle>()?;
    module.add_class::<plan::PyPlan>()?;
    module.add_function(wrap_pyfunction!(piece::edge_length, module)?)?;
    module.add_function(wrap_pyfunction!(copy_edge::measured_edge, module)?)?;
    module.add_function(wrap_pyfunction!(copy_edge::opened_edge, module)?)?;
    module.add_function(wrap_pyfunction!(true_up::true_up, module)?)?;
    module.add_function(wrap_pyfunction!(panel::usable_panel, module)?)?;
    module.add_function(wrap_pyfunction!(panel::largest_rectangle, module)?)?;
    module.add_function(wrap_pyfunction!(panel::tallest_rectangle, module)?)?;
    module.add_function(wrap_pyfunction!(draft::draft, module)?)?;
    lay::register(module)?;
    module.add_function(wrap_pyfunction!(plan::plan, module)?)
}
