//! All pieces on all panels, by several ways of looking.

use crate::jigsaw::Jigsaw;
use crate::matched::{links, matched};
use crate::pack::Pack;
use crate::search::{Kind, Search, first_lay, lay_again, placements};
use crate::watch::Watch;
use crate::{Options, Placement};

/// All pieces together, by one way of looking after the other until one has them all.
pub(crate) fn together(
    search: &mut Search<'_>,
    pieces: &[Kind],
    may: &dyn Fn(Kind, usize) -> bool,
    hopeless: bool,
    options: &Options,
    watch: &mut Watch<'_>,
) -> (Vec<Placement>, Vec<usize>) {
    let (parts, panels) = (search.parts, search.panels);
    let places: Vec<Vec<usize>> = pieces
        .iter()
        .map(|&kind| {
            (0..panels.len())
                .filter(|&panel| may(kind, panel))
                .collect()
        })
        .collect();
    if let Some(links) = links(parts, panels, pieces) {
        return matched(search, pieces, &places, &links, hopeless, options, watch);
    }
    watch.give(search.work, 1.0);
    let mut best = first_lay(search, pieces, &places, watch);
    watch.best = Some(best.share(search, pieces));
    if best.is_whole() || hopeless {
        lay_again(search, pieces, &places, &mut best, options.seed, watch);
        return placements(search, pieces, best);
    }
    let jigsaw = match options.spacing > 0.0 {
        true => None,
        false => Jigsaw::new(parts, panels, pieces, may),
    };
    for (share, loose) in [(0.3, false), (0.3, true)] {
        if let Some(jigsaw) = &jigsaw
            && jigsaw.is_tight() != loose
        {
            watch.give(search.work, share);
            if let Some(found) = jigsaw.fill(options.seed, &mut search.work, watch) {
                return (found, Vec::new());
            }
        }
        if !loose {
            watch.give(search.work, 0.1);
            lay_again(search, pieces, &places, &mut best, options.seed, watch);
        }
    }
    if !best.is_whole()
        && let Some(pack) = Pack::new(search, pieces, &places, None)
    {
        let threads = match options.threads {
            0 => std::thread::available_parallelism().map_or(1, usize::from),
            threads => threads,
        };
        watch.give(search.work, 0.6);
        let packed = pack.run(&best, options.seed, threads, &mut search.work, watch);
        best = packed.unwrap_or(best);
    }
    watch.give(search.work, 1.0);
    lay_again(search, pieces, &places, &mut best, !options.seed, watch);
    placements(search, pieces, best)
}
