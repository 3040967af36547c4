//! A piece, from JSON or drafted, and every operation on it.

use arbitrary::Result;
use kurbo::{Line, Point};
use recloth::outline::{
    CopyFit, Curve, Dart, EdgeBy, EdgeEnd, Facing, Kept, Lining, LiningDarts, LiningHem, Mark,
    Meeting, NewSeam, Opening, PairedNotch, Piece, Place, Segment, Slash, Way, measured_edge,
    sentence, true_up,
};
use recloth_sheet::{PieceOptions, piece_drawing, svg};

use crate::{draft, edit::edit, input::Input, vary::vary};

/// A piece as JSON, then numbers for operations; or numbers alone, for a draft and changes to it.
pub(crate) fn target(input: &mut Input) -> Result<()> {
    let rest = input.0.peek_bytes(input.0.len()).unwrap_or_default();
    let mut piece = if rest.first() == Some(&b'{') {
        let mut reader = serde_json::Deserializer::from_slice(rest).into_iter::<Piece>();
        let Some(Ok(piece)) = reader.next() else {
            return Ok(());
        };
        let used = reader.byte_offset();
        input.0.bytes(used)?;
        piece
    } else {
        let Some(piece) = draft::piece(input)? else {
            return Ok(());
        };
        let mut json = serde_json::to_value(&piece).expect("a piece can be written");
        edit(&mut json, 4, input)?;
        let Ok(piece) = serde_json::from_value(json) else {
            return Ok(());
        };
        piece
    };
    if input.once_in(2)? {
        piece = vary(&piece, input)?;
    }
    check(&piece);
    look(&piece, input)?;
    for _ in 0..input.index(6)? {
        let other = draft::piece(input)?.unwrap_or_else(|| piece.clone());
        match operation(&piece, &other, input)? {
            Ok(made) => {
                for one in &made {
                    check(one);
                }
                piece = made.into_iter().next_back().unwrap_or(piece);
            }
            Err(error) => {
                assert!(!piece.sentence(&error).is_empty());
                assert!(!sentence("it", other.edges(), &error).is_empty());
            }
        }
    }
    Ok(())
}

/// A good piece stays one when it is written down and read again, and it can be drawn or says why not.
pub(crate) fn check(piece: &Piece) {
    let told = || serde_json::to_string(piece).unwrap_or_default();
    assert!(piece.area() > 0.0 && piece.area().is_finite(), "{}", told());
    let bounds = piece.bounds();
    // A motion may take a piece further than one is read from.
    let far = bounds.min_x().min(bounds.min_y()) < -9e4 || bounds.max_x().max(bounds.max_y()) > 9e4;
    match serde_json::from_str::<Piece>(&told()) {
        Ok(again) => assert_eq!(&again, piece),
        Err(error) => assert!(far, "{error}: {}", told()),
    }
    for made in [piece.cut_line(0.05), piece.seam_line(0.05)] {
        match made {
            Ok(line) => {
                assert!(line.area().is_finite() && line.length() > 0.0, "{}", told());
                assert!(
                    line.flatten(0.5).iter().all(|point| point.is_finite()),
                    "{}",
                    told()
                );
                assert!(line.path(0.5).is_finite(), "{}", told());
            }
            Err(error) => assert!(!piece.sentence(&error).is_empty()),
        }
    }
}

/// What is asked of a piece without changing it.
fn look(piece: &Piece, input: &mut Input) -> Result<()> {
    let tolerance = input.number([1e-6, 1.0], &[0.01])?;
    let point = point(piece, input)?;
    let (place, gap) = piece.place(point);
    assert!(gap >= 0.0 && place.edge < piece.edges().len());
    for line in [piece.cut_line(tolerance), piece.seam_line(tolerance)]
        .into_iter()
        .flatten()
    {
        assert!(!line.distance(point).is_nan());
        line.contains(point);
        assert!(
            line.notches()
                .iter()
                .all(|notch| notch.cut.is_finite() && notch.seam.is_finite())
        );
        assert!(!line.segments().is_empty() && line.bounds().is_finite());
        line.flatten(tolerance);
        for error in line.unmade() {
            assert!(!piece.sentence(error).is_empty());
        }
        assert!(line.cutouts().len() == piece.cutouts().count());
    }
    let at = input.number([0.0, 1000.0], &[])?;
    for (index, edge) in piece.edges().iter().enumerate() {
        piece.at(index, at);
        edge.curve.at(at);
        edge.curve.nearest(point);
        edge.curve.part(at / 2.0, at);
        edge.curve.bounds();
        assert!(edge.curve.start().is_finite());
        assert!(edge.inside() >= 0.0 && edge.outside() >= 0.0);
    }
    for (_, segment) in piece.segments(tolerance) {
        look_at(&segment, point, at);
    }
    // Of anything, for a segment is not checked.
    let anywhere = |input: &mut Input| input.number([-1e5, 1e5], &[0.0]);
    let mut numbers = [0.0; 6];
    for number in &mut numbers {
        *number = anywhere(input)?;
    }
    let [a, b, c, d, e, f] = numbers;
    look_at(&Segment::arc((a, b), (c, d), e), point, f);
    look_at(&Segment::line((a, b), (c, d)), point, f);
    look_at(&Segment::about((a, b), c, d, e), point, f);
    look_at(&Segment::through((a, b), (c, d), (e, f)), point, a);
    for mark in piece.marks() {
        assert!(mark.name().len() < 1 << 20);
        if let Mark::Dart(dart) = mark {
            assert!(dart.intake().is_finite());
            assert!(dart.leg_lengths().iter().all(|length| length.is_finite()));
        }
    }
    piece.grain_deg();
    if let Ok(drawing) = piece_drawing(piece, &PieceOptions::default())
        && let Err(error) = svg(&drawing)
    {
        panic!(
            "{error}: {}",
            serde_json::to_string(piece).unwrap_or_default()
        );
    }
    Ok(())
}

fn look_at(segment: &Segment, point: Point, at: f64) {
    segment.at(at);
    segment.part(at / 2.0, at);
    segment.nearest(point);
    segment.length();
    segment.sweep_deg();
    segment.curvature();
    segment.radius();
    segment.centre();
    segment.start_tangent();
    segment.end_tangent();
    segment.middle();
    segment.bounds();
    assert_eq!(segment.reversed().is_line(), segment.is_line());
}

fn point(piece: &Piece, input: &mut Input) -> Result<Point> {
    let bounds = piece.bounds();
    let corner = piece.edges()[input.index(piece.edges().len())?].curve.end();
    Ok(Point::new(
        input.number([bounds.min_x() - 20.0, bounds.max_x() + 20.0], &[corner.x])?,
        input.number([bounds.min_y() - 20.0, bounds.max_y() + 20.0], &[corner.y])?,
    ))
}

/// The index of an edge, seldom of none.
fn edge(piece: &Piece, input: &mut Input) -> Result<usize> {
    let beyond = usize::from(input.once_in(16)?);
    input.index(piece.edges().len() + beyond)
}

fn edges(piece: &Piece, input: &mut Input) -> Result<Vec<usize>> {
    (0..input.index(4)?).map(|_| edge(piece, input)).collect()
}

fn place(piece: &Piece, input: &mut Input) -> Result<Place> {
    let edge = edge(piece, input)?;
    let length = piece.edges().get(edge).map_or(1.0, |edge| edge.length());
    let distance = input.number([0.0, length], &[0.0, length, length / 2.0])?;
    Ok(Place { edge, distance })
}

fn dart(piece: &Piece, input: &mut Input) -> Result<String> {
    let named = |mark: &Mark| match mark {
        Mark::Dart(Dart { name, .. }) => Some(name.clone()),
        _ => None,
    };
    let names: Vec<String> = piece.marks().iter().filter_map(named).collect();
    if names.is_empty() || input.once_in(16)? {
        return Ok("none".into());
    }
    Ok(names[input.index(names.len())?].clone())
}

type Made = std::result::Result<Vec<Piece>, recloth::Error>;

/// One operation on a piece: what it makes.
fn operation(piece: &Piece, other: &Piece, input: &mut Input) -> Result<Made> {
    let small = |input: &mut Input| input.number([0.0, 60.0], &[0.0, 10.0]);
    let ring = piece.edges().len();
    Ok(match input.index(23)? {
        0 => Ok(vec![piece.mirror()]),
        1 => piece.unfold().map(|whole| vec![whole]),
        2 => {
            let by = (small(input)?, small(input)?);
            // Beyond what is drawn nothing is promised.
            let near = by.0.abs() + by.1.abs() < 1e4;
            Ok(if near {
                vec![piece.shifted(by)]
            } else {
                vec![]
            })
        }
        3 => {
            let angle = input.number([-360.0, 360.0], &[90.0])?;
            let near = angle.abs() < 1e6;
            Ok(if near {
                vec![piece.turned(angle)]
            } else {
                vec![]
            })
        }
        4 => {
            let (start, end) = (point(piece, input)?, point(piece, input)?);
            let cut = match input.index(3)? {
                0 => Curve::line(start, end),
                1 => Curve::arc(start, end, input.number([-1.0, 1.0], &[0.1])?),
                _ => Curve::cubic(start, point(piece, input)?, point(piece, input)?, end),
            };
            let seam = NewSeam {
                name: "new".into(),
                allowance: small(input)?,
                notches: (0..input.index(3)?)
                    .map(|_| small(input))
                    .collect::<Result<_>>()?,
            };
            piece.split(&cut, &seam).map(Vec::from)
        }
        5 => {
            let (this, that) = (edge(piece, input)?, edge(other, input)?);
            let joined = piece.join(this, other, that, small(input)?);
            joined.map(|joined| {
                assert!(joined.gap >= 0.0);
                vec![joined.piece]
            })
        }
        6 => {
            let facing = Facing {
                name: "facing".into(),
                depth: small(input)?,
                roll: small(input)? / 20.0,
                inner_allowance: small(input)?,
            };
            piece
                .facing(&edges(piece, input)?, &facing)
                .map(|one| vec![one])
        }
        7 => {
            let slash = |input: &mut Input| -> Result<Slash> {
                Ok(Slash {
                    open: place(piece, input)?,
                    hinge: place(piece, input)?,
                    open_by: small(input)?,
                    hinge_by: if input.once_in(2)? {
                        0.0
                    } else {
                        small(input)?
                    },
                })
            };
            let slashes: Vec<Slash> = (0..input.index(4)?)
                .map(|_| slash(input))
                .collect::<Result<_>>()?;
            piece.slash_and_spread(&slashes).map(|one| vec![one])
        }
        8 => {
            let change = |input: &mut Input| input.number([-90.0, 100.0], &[0.0, -3.0]);
            let (along, across) = (change(input)?, change(input)?);
            piece.scale_for_change(along, across).map(|one| vec![one])
        }
        9 => {
            let opening = |input: &mut Input| -> Result<Opening> {
                Ok(Opening {
                    name: "turned".into(),
                    at: place(piece, input)?,
                    share: input.number([1e-6, 1.0], &[0.5, 1.0])?,
                })
            };
            let openings: Vec<Opening> = (0..input.index(3)?)
                .map(|_| opening(input))
                .collect::<Result<_>>()?;
            piece
                .turn_dart(&dart(piece, input)?, &openings)
                .map(|one| vec![one])
        }
        10 => {
            let (dart, at) = (dart(piece, input)?, place(piece, input)?);
            piece.close_dart(&dart, at).map(|one| vec![one])
        }
        11 => {
            let point = point(piece, input)?;
            let (at, opposite) = (place(piece, input)?, place(piece, input)?);
            let opened = piece.open_dart("opened", point, at, small(input)?, opposite);
            opened.map(|one| vec![one])
        }
        12 => {
            let by = input.number([-60.0, 60.0], &[0.0])?;
            piece
                .shift_edges(&edges(piece, input)?, by)
                .map(|one| vec![one])
        }
        13 => {
            let corner = |input: &mut Input| -> Result<Point> {
                if input.once_in(4)? {
                    return point(piece, input);
                }
                Ok(piece.edges()[input.index(ring)?].curve.end())
            };
            let axis = Line::new(corner(input)?, corner(input)?);
            piece.symmetrise(axis, small(input)?).map(|found| {
                assert!(found.largest >= 0.0 && found.edge < ring);
                vec![found.half]
            })
        }
        14 => piece.handed(small(input)?).map(|_| vec![]),
        15 => {
            let way = *input.0.choose(&[Way::Against, Way::Along])?;
            let (these, those) = (edges(piece, input)?, edges(other, input)?);
            piece.walk(&these, other, &those, way).map(|walk| {
                let sections = walk.sections();
                assert!(
                    sections
                        .iter()
                        .all(|one| one.ease_pct().is_none_or(f64::is_finite))
                );
                let sum: f64 = sections.iter().map(|section| section.length).sum();
                assert!((sum - walk.length).abs() < 1e-6, "{walk:?}");
                assert!(
                    walk.notches
                        .iter()
                        .all(|n| n.difference().is_none_or(f64::is_finite))
                );
                vec![]
            })
        }
        17 => {
            let (from, to) = (place(piece, input)?, place(piece, input)?);
            let fit = CopyFit {
                gap: small(input)?,
                stretch_pct: small(input)? / 10.0,
            };
            let copied = other.trace(place(other, input)?, place(other, input)?);
            let share = input.number([0.0, 1.0], &[1.0])?;
            let named = dart(piece, input)?;
            let open = piece.marks().iter().find_map(|mark| match mark {
                Mark::Dart(dart) if dart.name == named => Some(dart),
                _ => None,
            });
            let copied = match open {
                Some(dart) => copied.and_then(|copied| dart.opened(&copied, share)),
                None => copied,
            };
            copied
                .and_then(|copied| piece.copy_edge(from, to, &copied, fit))
                .map(|copied| vec![copied.piece])
        }
        18 => {
            let points: Vec<Point> = (0..input.index(6)?)
                .map(|_| point(piece, input))
                .collect::<Result<_>>()?;
            measured_edge("measured", &points, input.once_in(2)?).map(|_| vec![])
        }
        19 => {
            let line = Line::new(point(piece, input)?, point(piece, input)?);
            piece.extend(line, small(input)?).map(|one| vec![one])
        }
        20 => {
            let by = |input: &mut Input| -> Result<Vec<EdgeBy>> {
                (0..input.index(3)?)
                    .map(|_| {
                        Ok(EdgeBy {
                            edge: edge(piece, input)?,
                            by: small(input)?,
                        })
                    })
                    .collect()
            };
            let lining = Lining {
                name: "lining".into(),
                cloth: "lining".into(),
                facings: by(input)?,
                ease: by(input)?,
                pleats: by(input)?,
                hem: LiningHem::Free {
                    clearance: small(input)?,
                    allowance: small(input)?,
                },
                darts: LiningDarts::Tucks,
                allowance: small(input)?,
                shell_change_pct: [-small(input)? / 10.0, 0.0],
                lining_change_pct: [0.0, -small(input)? / 10.0],
            };
            piece.lining(&lining).map(|lined| vec![lined.piece])
        }
        21 => {
            for found in piece.match_notches(other) {
                assert!(!found.matches() || found.here.is_some());
            }
            let notch = PairedNotch {
                name: "paired".into(),
                distance: small(input)?,
                ease: small(input)? / 10.0,
                marks: input.0.int_in_range(0..=4)?,
            };
            let (these, those) = (edges(piece, input)?, edges(other, input)?);
            piece
                .pair_notches(&these, other, &those, Way::Against, &[notch])
                .map(Vec::from)
        }
        22 => {
            let meeting = Meeting::Seam {
                pieces: [0, 1],
                edges: [edge(piece, input)?, edge(other, input)?],
                way: Way::Against,
                end: if input.once_in(2)? {
                    EdgeEnd::Start
                } else {
                    EdgeEnd::End
                },
                kept: *input
                    .0
                    .choose(&[Kept::Neither, Kept::First, Kept::Second])?,
            };
            let both = [piece.clone(), other.clone()];
            true_up(&both, &[meeting], small(input)?).map(|trued| trued.pieces)
        }
        _ => {
            let (dart, onto) = (dart(piece, input)?, edge(piece, input)?);
            piece.cap_dart(&dart, onto).map(|one| vec![one])
        }
    })
}
