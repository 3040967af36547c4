//! All pieces on panels with a repeat, matched.
//!
//! The ways of looking that know nothing of a print are of no use here. Pieces are strewn where their points match, and
//! overlaps driven out. Where not all come to lie clear, those that do are kept, and it is tried again without the
//! smallest that does not.

use crate::links::{Links, Mismatch};
use crate::pack::Pack;
use crate::phase::Tie;
use crate::search::{Kind, Search};
use crate::watch::Watch;
use crate::{Options, Panel, Part, Placement};

/// The kinds among some pieces, and how many there are of each.
fn counted(pieces: &[Kind]) -> Vec<(Kind, u32)> {
    let mut kinds: Vec<(Kind, u32)> = Vec::new();
    for &kind in pieces {
        match kinds.iter_mut().find(|(other, _)| *other == kind) {
            Some((_, count)) => *count += 1,
            None => kinds.push((kind, 1)),
        }
    }
    kinds
}

/// What ties the pieces; `None` where no panel has a repeat or nothing is to match.
pub(crate) fn links(parts: &[Part], panels: &[Panel], pieces: &[Kind]) -> Option<Links> {
    if panels.iter().all(|panel| panel.repeat().is_none()) {
        return None;
    }
    let links = Links::new(parts, &counted(pieces));
    (!links.is_empty()).then_some(links)
}

/// Points that no lay of all pieces can match, if there are any: where all panels have one and the same repeat, no grain may
/// run across it, and those pieces may not be tilted.
pub(crate) fn never(parts: &[Part], panels: &[Panel], pieces: &[Kind]) -> Option<Mismatch> {
    let first = panels.first()?.repeat()?;
    let lengths = [first.along, first.across];
    let same = |panel: &Panel| {
        panel
            .repeat()
            .is_some_and(|it| [it.along, it.across] == lengths)
    };
    let fixed = |kind: &Kind| parts[kind.part].tilt_deg == 0.0 && !parts[kind.part].crosswise;
    if !panels.iter().all(same) {
        return None;
    }
    let pieces: Vec<Kind> = pieces.iter().copied().filter(fixed).collect();
    links(parts, panels, &pieces)?.mismatch(lengths)
}

/// Whether a piece has a way to lie on a panel at which its own points match.
fn may_match(search: &mut Search<'_>, kind: Kind, places: &[usize], links: &Links) -> bool {
    places.iter().any(|&panel| {
        let choices = search.choices(kind, panel);
        choices.iter().any(|&attitude| {
            let (mirrored, turn_deg) = search.lie(attitude);
            let of = (links, search.parts, search.panels);
            Tie::new(of, kind, panel, mirrored, turn_deg).is_some()
        })
    })
}

/// All pieces together, matched: the placements, and the pieces left.
pub(crate) fn matched(
    search: &mut Search<'_>,
    pieces: &[Kind],
    places: &[Vec<usize>],
    links: &Links,
    hopeless: bool,
    options: &Options,
    watch: &mut Watch<'_>,
) -> (Vec<Placement>, Vec<usize>) {
    let threads = match options.threads {
        0 => std::thread::available_parallelism().map_or(1, usize::from),
        threads => threads,
    };
    let size = |piece: usize, search: &Search<'_>| search.areas[pieces[piece].part];
    // Pieces without a place, or whose own points never match, are left out; of others that cannot all match the smallest
    // first.
    let mut wanted: Vec<usize> = (0..pieces.len())
        .filter(|&piece| may_match(search, pieces[piece], &places[piece], links))
        .collect();
    wanted.sort_by(|&a, &b| size(b, search).total_cmp(&size(a, search)).then(a.cmp(&b)));
    let mut found: Vec<(usize, Placement)> = Vec::new();
    // Where not all can be laid, little is spent on all of them.
    let mut share = if hopeless { 0.1 } else { 0.7 };
    while !wanted.is_empty() {
        let kinds: Vec<Kind> = wanted.iter().map(|&piece| pieces[piece]).collect();
        let own: Vec<Vec<usize>> = wanted.iter().map(|&piece| places[piece].clone()).collect();
        let pack = Pack::new(search, &kinds, &own, Some(links));
        watch.give(search.work, share);
        let packed = pack.and_then(|pack| {
            let packed = pack.drive(None, options.seed, threads, &mut search.work, watch)?;
            Some((pack, packed))
        });
        let Some((pack, packed)) = packed else {
            let tied = |kind: &Kind| links.ties(*kind);
            let last = kinds.iter().rposition(tied).unwrap_or(kinds.len() - 1);
            wanted.remove(last);
            continue;
        };
        let order: Vec<usize> = (0..wanted.len()).collect();
        let laid = pack.clear(&packed, &order);
        let area: f64 = laid
            .iter()
            .map(|&(index, ..)| size(wanted[index], search))
            .sum();
        let before: f64 = found.iter().map(|&(piece, _)| size(piece, search)).sum();
        let all = laid.len() == wanted.len();
        if area > before {
            let place = |&(index, panel, attitude, shift): &(usize, usize, usize, _)| {
                let placement = search.placement(kinds[index], panel, attitude, shift);
                (wanted[index], placement)
            };
            found = laid.iter().map(place).collect();
        }
        // With all of these clear, or no work left, that is it; else the same without the smallest that was not.
        watch.give(search.work, 1.0);
        if all || watch.is_over(search.work) {
            break;
        }
        share = 0.3;
        let left = |index: &usize| !laid.iter().any(|(other, ..)| other == index);
        match (0..wanted.len()).rev().find(left) {
            Some(index) => drop(wanted.remove(index)),
            None => break,
        }
    }
    found.sort_by_key(|(piece, _)| *piece);
    let left = (0..pieces.len())
        .filter(|piece| found.iter().all(|(other, _)| other != piece))
        .collect();
    (found.into_iter().map(|(_, at)| at).collect(), left)
}
