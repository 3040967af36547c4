//! Drafts: the measures asked for, worked by hand; seams that walk; errors whose bounds do.

mod bands;
#[path = "../random/mod.rs"]
mod random;
mod samples;
mod skirts;
mod sweep;
mod tops;

use recloth::draft::{CheckKind, Draft, Measures, Seam};
use recloth::outline::{Edge, Piece, Walk};
use recloth::{Error, ErrorKind};

fn close(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "{found} is not {wanted}");
}

fn piece<'a>(draft: &'a Draft, name: &str) -> &'a Piece {
    draft
        .piece(name)
        .unwrap_or_else(|| panic!("{name} among {:?}", names(draft)))
}

fn names(draft: &Draft) -> Vec<&str> {
    draft.pieces.iter().map(Piece::name).collect()
}

fn seam<'a>(draft: &'a Draft, name: &str) -> &'a Seam {
    let found = draft.seams.iter().find(|seam| seam.name == name);
    found.unwrap_or_else(|| panic!("no seam {name}"))
}

/// Distances of a notch that both sides of a walk have.
fn notch(walk: &Walk, name: &str) -> (f64, f64) {
    let found = walk.notches.iter().find(|notch| notch.name == name);
    let found = found.unwrap_or_else(|| panic!("no notch {name}"));
    (
        found.distance.expect("on this side"),
        found.other.expect("on the other"),
    )
}

/// Length of all edges whose names begin so.
fn length(piece: &Piece, stem: &str) -> f64 {
    let edges = piece.edges().iter();
    edges
        .filter(|edge| edge.name.starts_with(stem))
        .map(Edge::length)
        .sum()
}

fn cut_length(draft: &Draft, name: &str) -> f64 {
    let found = draft.lengths.iter().find(|length| length.name == name);
    found.unwrap_or_else(|| panic!("no length {name}")).length
}

/// What every draft must be: its checks hold, its seams walk as meant by lengths measured here anew, its pieces can be cut.
fn sound(draft: &Draft) {
    assert!(!draft.pieces.is_empty() && !draft.checks.is_empty());
    for check in &draft.checks {
        assert!(check.found.abs() <= check.within, "{check:?}");
        // The limits that were promised.
        let limit = if check.kind == CheckKind::Run {
            1.0
        } else {
            0.5
        };
        assert_eq!(check.within, limit);
    }
    for seam in &draft.seams {
        close(seam.walk.difference, seam.ease, 0.5);
        let measured = |edges: &[recloth::draft::EdgeName]| -> Option<f64> {
            let lengths = edges.iter().map(|name| {
                let piece = draft.piece(&name.piece)?;
                Some(piece.edges()[piece.edge(&name.edge)?].length())
            });
            lengths.sum()
        };
        for (edges, length) in [
            (&seam.edges, seam.walk.length),
            (&seam.other_edges, seam.walk.other_length),
        ] {
            if let Some(found) = measured(edges) {
                close(found, length, 1e-6);
            }
        }
    }
    for piece in &draft.pieces {
        assert!(
            piece.grain().is_some() || piece.name().starts_with("bodice"),
            "{}",
            piece.name()
        );
        let cut = piece
            .cut_line(0.1)
            .unwrap_or_else(|error| panic!("{}: {error}", piece.name()));
        assert!(cut.area() >= piece.area() * (1.0 - 1e-9));
        // Names say which edge is meant.
        let mut edges: Vec<&str> = piece
            .edges()
            .iter()
            .map(|edge| edge.name.as_str())
            .collect();
        edges.sort_unstable();
        edges.dedup();
        assert_eq!(edges.len(), piece.edges().len(), "{}", piece.name());
    }
}

/// An error of this kind naming this measure.
fn fails(draft: Result<Draft, Error>, kind: ErrorKind, argument: &str) -> Error {
    let error = draft.expect_err(argument);
    assert_eq!(
        (error.kind(), error.argument()),
        (kind, argument),
        "{error}"
    );
    error
}

#[test]
fn a_sample_of_every_draft_is_sound() {
    for (name, measures) in samples::all() {
        let draft = measures.draft();
        sound(&draft.unwrap_or_else(|error| panic!("{name}: {error}")));
    }
}

#[test]
fn measures_and_drafts_come_back_from_their_json() {
    for (name, measures) in samples::all() {
        let text = serde_json::to_string(&measures).expect(name);
        let again: Measures = serde_json::from_str(&text).expect(name);
        assert_eq!(again, measures, "{name}");
        let draft = measures.draft().expect(name);
        let text = serde_json::to_string(&draft).expect(name);
        let back: Draft = serde_json::from_str(&text).expect(name);
        assert_eq!(back, draft, "{name}");
    }
}
