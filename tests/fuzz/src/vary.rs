//! A piece with other corners, notches and marks.

use arbitrary::Result;
use kurbo::{Line, Point};
use recloth::outline::{Corner, Curve, Cutout, Cutting, Edge, Hand, LineKind, Mark, Piece, Role};

use crate::input::Input;

/// The piece with some of all it may have; the piece itself where that is no good piece.
pub(crate) fn vary(piece: &Piece, input: &mut Input) -> Result<Piece> {
    let edges = piece
        .edges()
        .iter()
        .map(|old| edge(old, input))
        .collect::<Result<_>>()?;
    let mut marks = piece.marks().to_vec();
    for _ in 0..input.index(4)? {
        marks.push(mark(piece, input)?);
    }
    let cutting = Cutting {
        count: input.number([1.0, 6.0], &[2.0])? as u32,
        hand: if input.once_in(2)? {
            Hand::Mirrored
        } else {
            Hand::Identical
        },
        ..piece.cutting().clone()
    };
    let grain = Line::new(inside(piece, input)?, inside(piece, input)?);
    let grain = piece
        .grain()
        .filter(|_| grain.p0.x > grain.p1.x)
        .unwrap_or(grain);
    let whole = || {
        Piece::new(piece.name(), edges)?
            .with_marks(marks)?
            .with_cutting(cutting)?
            .with_grain(grain)
    };
    match whole() {
        Ok(varied) => {
            assert_eq!(varied.fold().is_some(), piece.fold().is_some());
            assert_eq!(varied.edge("no such edge"), None);
            Ok(varied.with_name("varied"))
        }
        Err(error) => {
            assert!(!piece.sentence(&error).is_empty());
            Ok(piece.clone())
        }
    }
}

fn edge(old: &Edge, input: &mut Input) -> Result<Edge> {
    let allowance = if input.once_in(2)? {
        old.allowance
    } else {
        input.number([0.0, 60.0], &[0.0, 10.0, old.allowance])?
    };
    let mut edge = match old.role {
        Role::Fold => Edge::fold(&old.name, old.curve),
        _ if input.once_in(6)? => Edge::opening(&old.name, old.curve, allowance),
        Role::Hem => Edge::hem(&old.name, old.curve, allowance),
        _ => Edge::seam(&old.name, old.curve, allowance),
    };
    edge.notches.clone_from(&old.notches);
    if old.role != Role::Fold && input.once_in(8)? {
        edge = edge.already_cut();
    }
    let length = old.length();
    for _ in 0..input.index(3)? {
        let at = input.number([0.0, length], &[0.0, length])?;
        let marks = input.0.int_in_range(1..=3)?;
        edge = if input.once_in(2)? {
            edge.notch("slit", at, marks)
        } else {
            edge.wedge("wedge", at, marks)
        };
    }
    let corner = match input.index(12)? {
        0 => Corner::SquaredToThis,
        1 => Corner::SquaredToNext,
        2 => Corner::MirroredOnThis,
        3 => Corner::MirroredOnNext,
        4 => Corner::SteppedOnThis,
        5 => Corner::SteppedOnNext,
        6 => Corner::Trimmed {
            distance: input.number([0.0, 60.0], &[allowance])?,
        },
        7 => Corner::Rounded {
            radius: input.number([0.0, 60.0], &[allowance])?,
        },
        8 => Corner::Pointed {
            limit: input.number([1.0, 100.0], &[4.0])?,
        },
        _ => old.corner,
    };
    Ok(edge.corner(corner))
}

/// A point within the box of a piece.
fn inside(piece: &Piece, input: &mut Input) -> Result<Point> {
    let bounds = piece.bounds();
    Ok(Point::new(
        bounds.min_x() + bounds.width() * input.share()?,
        bounds.min_y() + bounds.height() * input.share()?,
    ))
}

fn mark(piece: &Piece, input: &mut Input) -> Result<Mark> {
    let (at, other) = (inside(piece, input)?, inside(piece, input)?);
    Ok(match input.index(4)? {
        0 => Mark::Drill {
            name: "drill".into(),
            at,
        },
        1 => Mark::Line {
            name: "line".into(),
            kind: *input.0.choose(&[LineKind::Fold, LineKind::Placement])?,
            curve: Curve::arc(at, other, input.number([-1.0, 1.0], &[0.0])?),
        },
        2 => Mark::Buttonhole {
            name: "hole".into(),
            ends: [at, other],
        },
        _ => {
            let size = 1.0 + 40.0 * input.share()?;
            let corner = |dx: f64, dy: f64| Point::new(at.x + dx * size, at.y + dy * size);
            let corners = [corner(0.0, 0.0), corner(1.0, 0.1), corner(0.4, 1.0)];
            let bulge = input.number([-1.0, 1.0], &[0.0])?;
            let side = |index: usize| {
                let curve = Curve::arc(corners[index], corners[(index + 1) % 3], bulge);
                Edge::seam("cut out", curve, size / 10.0)
            };
            Mark::Cutout(Cutout {
                name: "cut-out".into(),
                edges: (0..3).map(side).collect(),
            })
        }
    })
}
