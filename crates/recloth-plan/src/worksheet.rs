//! The worksheet: one page that goes to the cutting table, with nothing outside itself.

use maud::{DOCTYPE, Markup, PreEscaped, html};
use recloth::Error;
use recloth::outline::{Hand, Piece, Role};
use recloth_lay::{Faces, Fit, Needed, Part, Shortage, Together};

use crate::giving::Given;
use crate::laying::Laid;
use crate::measure::{mass_text, volume_text};
use crate::order::Placed;
use crate::plan::{CutPiece, Plan};

const CSS: &str = include_str!("worksheet.css");

/// The worksheet as HTML. Lengths are in the brief's own style, rounded so that they add up.
pub(crate) fn worksheet(plan: &Plan, lay_svgs: &[[Vec<String>; 2]]) -> Result<String, Error> {
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (plan.title) }
                style { (PreEscaped(CSS)) }
            }
            body {
                header {
                    h1 { (plan.title) }
                    @if !plan.note.is_empty() { p.note { (plan.note) } }
                    p.answer { (plan.answer()) }
                    nav {
                        a href="#doubts" { "Doubts" }
                        a href="#cut" { "Cut list" }
                        a href="#lays" { "Lays" }
                        a href="#sums" { "Lengths that meet" }
                        a href="#cautions" { "Cautions" }
                        @if !plan.baths.is_empty() { a href="#baths" { "Baths" } }
                        a href="#work" { "Order of work" }
                    }
                }
                section id="doubts" {
                    h2 { "Doubts" }
                    @if plan.doubts.is_empty() { p { "None." } } @else {
                        p { "What may be a slip, or needs a second look. A doubt changes no number." }
                        ul.plain { @for doubt in &plan.doubts { li { (doubt) } } }
                    }
                }
                (cut_list(plan))
                (lays(plan, lay_svgs))
                (sums(plan))
                section id="cautions" {
                    h2 { "Cautions" }
                    ul.plain { @for caution in &plan.cautions { li { (caution) } } }
                }
                @if !plan.baths.is_empty() { (baths(plan)) }
                (work(plan))
                footer {
                    p.note { "Worked out by recloth from a brief. The pieces at full size are in sheets-a4.pdf and \
                              sheets-letter.pdf: print at 100 %, and measure the squares on the first page before cutting." }
                }
            }
        }
    };
    Ok(page.into_string())
}

impl Plan {
    /// What fits, in a sentence or two.
    pub fn answer(&self) -> String {
        let count = self.count();
        let unplaced = self.unplaced();
        if unplaced.is_empty() {
            let there =
                (!self.panels.is_empty()).then(|| format!("the {} panels", self.panels.len()));
            let bought = (self.lays.iter()).filter_map(|laid| {
                let ask = self.tape.text(laid.bought?.ask);
                Some(format!("{ask} of {} to be bought", laid.cloth))
            });
            let places: Vec<String> = there.into_iter().chain(bought).collect();
            return format!(
                "Everything fits: all {count} pieces have a place on {}.",
                places.join(" and ")
            );
        }
        let missing: u32 = unplaced.iter().map(|(_, count)| count).sum();
        let mut text = format!(
            "{} of {count} pieces have a place. Without one:",
            count - missing
        );
        for (number, missing) in unplaced {
            let piece = &self.piece(number).piece;
            let (of, name) = (piece.cutting().count, piece.name());
            let why = match self.proof(number) {
                Some((_, right)) => format!("larger than every panel. {right}"),
                None => String::from("no place was found."),
            };
            text.push_str(&format!(" {missing} of {of}, {name}: {why}"));
        }
        for laid in &self.lays {
            let found = laid.given.as_ref().map(|given| &given.least.answer);
            match found {
                Some(Needed::Changed { .. }) => {
                    let least = self.given(laid).join("; ");
                    text.push_str(&format!(" All of it fits if this gives: {least}."));
                    continue;
                }
                Some(Needed::Never { .. }) => {
                    text.push_str(" It is proved that what may give is not enough.");
                    continue;
                }
                Some(_) => text.push_str(" What may give was not found to be enough."),
                None => {}
            }
            text.push_str(match &laid.fit.together {
                Together::Fit => "",
                Together::Cannot(Shortage::Area { .. }) => {
                    " It is proved that they cannot all lie there: they have more area than the panels that could take \
                     them. Leave something out, make it smaller, or find more cloth."
                }
                Together::Cannot(Shortage::TooFew { .. }) => {
                    " It is proved that they cannot all lie there: there are more large pieces than panels to take them. \
                     Leave something out, make it smaller, or find more cloth."
                }
                Together::Cannot(Shortage::Across { .. }) => {
                    " It is proved that they cannot all lie there: the long ones go side by side only, and are wider \
                     together than the panels that could take them. Make them narrower, or so short that two lie one after \
                     the other, or find more cloth."
                }
                Together::Cannot(Shortage::Along { .. }) => {
                    " It is proved that they cannot all lie there: the wide ones go one after the other only, and are longer \
                     together than the panels that could take them. Make them shorter, or so narrow that two lie side by \
                     side, or find more cloth."
                }
                Together::Cannot(_) => "",
                Together::Undecided => {
                    " That is no proof that there is none: a better lay may be found by hand. Shorter, narrower or \
                     fewer pieces, or a joined one, would help."
                }
            });
        }
        text
    }

    /// The largest rectangles that are left of a cloth, in a line; none where nothing is.
    pub fn left_over(&self, laid: &Laid) -> Option<String> {
        let left = self.rectangles_left(laid);
        let told: Vec<String> = (left.iter().take(3))
            .map(|(panel, rectangle)| {
                format!(
                    "{} ({})",
                    self.rectangle_text(rectangle),
                    laid.panels[*panel].name()
                )
            })
            .collect();
        let more = match left.len() {
            0 => return None,
            1..=3 => String::new(),
            count => format!(", and {} smaller", count - 3),
        };
        Some(format!(
            "Left of the {}: {}{more}.",
            laid.cloth,
            told.join(", ")
        ))
    }

    /// For each cloth that is bought by the length what to ask for, in a sentence or two.
    pub fn to_buy(&self) -> Vec<String> {
        self.lays
            .iter()
            .filter_map(|laid| self.ask_for(laid))
            .collect()
    }

    fn ask_for(&self, laid: &Laid) -> Option<String> {
        let bought = laid.bought?;
        let [ask, width, length] =
            [bought.ask, bought.width, bought.length].map(|length| self.tape.text(length));
        let folded = match bought.folded {
            true => {
                " It is cut folded: fold it lengthwise, right sides together, selvedges together."
            }
            false => "",
        };
        Some(format!(
            "Ask for {ask} of {}, {width} wide between the selvedges: the pieces take {length}, the wash counted in.{folded}",
            laid.cloth
        ))
    }
}

/// How many, which hand, in words.
fn how_many(piece: &Piece) -> String {
    let cutting = piece.cutting();
    let count = cutting.count;
    let fold = if piece.fold().is_some() {
        ", on the fold"
    } else {
        ""
    };
    match cutting.hand {
        Hand::Mirrored => format!("{count}: {0} as drawn, {0} mirrored{fold}", count / 2),
        Hand::Identical if count == 1 => format!("1{fold}"),
        Hand::Identical => format!("{count}, all alike{fold}"),
    }
}

/// Which edges carry how much beyond the seam line: edges of one allowance together.
fn allowances(plan: &Plan, piece: &Piece) -> String {
    let mut groups: Vec<(f64, Vec<&str>)> = Vec::new();
    for edge in piece.edges() {
        if edge.role == Role::Fold || edge.name.starts_with("cap ") {
            continue;
        }
        // "waist 1" and "waist 2" are one edge with a dart in it.
        let name = edge
            .name
            .trim_end_matches(|c: char| c.is_ascii_digit())
            .trim_end();
        match groups
            .iter_mut()
            .find(|(allowance, _)| *allowance == edge.outside())
        {
            Some((_, names)) if names.contains(&name) => {}
            Some((_, names)) => names.push(name),
            None => groups.push((edge.outside(), vec![name])),
        }
    }
    if let [(allowance, names)] = &groups[..]
        && names.len() > 1
    {
        return format!("{} on every edge", plan.tape.text(*allowance));
    }
    let words = groups.iter().map(|(allowance, names)| match *allowance {
        0.0 => format!("none: {}", names.join(", ")),
        allowance => format!("{}: {}", plan.tape.text(allowance), names.join(", ")),
    });
    words.collect::<Vec<_>>().join("; ")
}

fn size(plan: &Plan, piece: &CutPiece) -> Markup {
    let bounds = piece.cut_line.bounds();
    html! { span.len { (plan.tape.text(bounds.width())) } " by " span.len { (plan.tape.text(bounds.height())) } }
}

fn cut_list(plan: &Plan) -> Markup {
    html! {
        section id="cut" {
            h2 { "Cut list" }
            p { "Sizes are of the cut line, at its widest and longest. Numbers are those in the lays." }
            table {
                thead { tr {
                    th.number { "No." } th { "Piece" } th { "Cloth" } th { "How many" } th { "Size as cut" }
                    th { "Allowances already on it" } th { "Cut" }
                } }
                tbody {
                    @for piece in &plan.pieces {
                        tr {
                            td.number { (piece.number) }
                            td {
                                strong { (piece.piece.name()) }
                                @if let Some(interfacing) = &piece.piece.cutting().interfacing {
                                    br; "with " (interfacing)
                                }
                            }
                            td { (piece.piece.cutting().cloth) }
                            td { (how_many(&piece.piece)) }
                            td { (size(plan, piece)) }
                            td { (allowances(plan, &piece.piece)) }
                            td {
                                @for _ in 0..piece.piece.cutting().count.min(24) { span.box {} " " }
                                @if piece.cut_later { br; "later: see the order of work" }
                            }
                        }
                    }
                    tr.total { td.number { (plan.count()) } td colspan="6" { "pieces in all" } }
                }
            }
        }
    }
}

fn lays(plan: &Plan, drawings: &[[Vec<String>; 2]]) -> Markup {
    html! {
        section id="lays" {
            h2 { "Lays" }
            p {
                "Panels as they lie right side up, the arrow along the warp. The grey is cloth that is left over; what is \
                 worn, pricked or flawed is already taken off, and so is what the wash takes. Numbers are those of the \
                 cut list; “over”: turn the paper over before you lay it on. Lay out every piece before the first cut."
            }
            @if plan.lays.iter().any(|laid| laid.panels.iter().any(|panel| panel.faces() == Faces::Two)) {
                p {
                    "On cloth that looks alike on both sides, both halves of a mirrored pair may lie the same way up: \
                     one of them is turned over when it is sewn."
                }
            }
            @for (laid, [drawings, changed]) in plan.lays.iter().zip(drawings) {
                h3 { (laid.cloth) ": " (format!("{:.0}", 100.0 * laid.fit.share)) " % of it used" }
                @if let Some(line) = plan.ask_for(laid) {
                    p {
                        (line) " It is washed before they are laid on it; the selvedges are below and above."
                    }
                }
                @if laid.bought.is_some_and(|bought| bought.folded) {
                    p {
                        "The lay is drawn opened, the fold as a broken line. Lay on the folded cloth what is drawn below the \
                         fold, its paper wrong side up where it says “over”, and on the fold what lies across it; cut \
                         through both layers. What is drawn above is cut with it; where nothing is drawn there, what is \
                         cut is spare."
                    }
                }
                div.panels {
                    @for (index, drawing) in drawings.iter().enumerate() {
                        figure {
                            (PreEscaped(drawing))
                            figcaption { (lies_there(plan, laid, (&laid.parts, &laid.fit), index)) }
                        }
                    }
                }
                @if let Some((_, parts, fit)) = laid.given.as_ref().and_then(Given::changed) {
                    h3 { (laid.cloth) ": all of it, once something gives" }
                    p { "As little as was found, of what you allow. Nothing of it is on the pieces at full size: change them \
                         before you cut, and what is sewn to them alike." }
                    ul.plain { @for line in plan.given(laid) { li { (line) } } }
                    div.panels {
                        @for (index, drawing) in changed.iter().enumerate() {
                            figure {
                                (PreEscaped(drawing))
                                figcaption { (lies_there(plan, laid, (parts, fit), index)) }
                            }
                        }
                    }
                }
                (left_over(plan, laid))
            }
        }
    }
}

/// The pieces on a panel by number and name.
fn lies_there(plan: &Plan, laid: &Laid, (parts, fit): (&[Part], &Fit), panel: usize) -> Markup {
    let mut numbers: Vec<usize> = fit
        .lay
        .placements
        .iter()
        .filter(|placement| placement.panel == panel)
        .map(|placement| laid.piece_of(parts, placement.part).0)
        .collect();
    numbers.sort_unstable();
    numbers.dedup();
    html! {
        @if numbers.is_empty() { "left over" }
        @for number in numbers {
            span.entry { strong { (number) } " " (plan.piece(number).piece.name()) } " "
        }
    }
}

/// What is left of a cloth, part by part.
fn left_over(plan: &Plan, laid: &Laid) -> Markup {
    let left = plan.rectangles_left(laid);
    html! {
        @if !left.is_empty() {
            p { "Left over, of each part the largest rectangle on grain, drawn as a fine line; across the grain by along it:" }
            table {
                thead { tr { th { "Panel" } th { "Rectangle" } } }
                tbody {
                    @for (panel, rectangle) in left {
                        tr { td { (laid.panels[panel].name()) } td { span.len { (plan.rectangle_text(rectangle)) } } }
                    }
                }
            }
        }
    }
}

fn sums(plan: &Plan) -> Markup {
    html! {
        section id="sums" {
            h2 { "Lengths that meet" }
            p { "Seam line to seam line, no allowances. Rounded together, so that they add up on the tape." }
            div.sums { @for sum in &plan.sums {
                @let lengths: Vec<f64> = sum.terms.iter().map(|(_, length)| *length).collect();
                @let (tapes, total) = plan.tape.set(&lengths);
                table.sum {
                    thead { tr { th { (sum.what) } th.number { "Length" } } }
                    tbody {
                        @for ((term, _), tape) in sum.terms.iter().zip(&tapes) {
                            tr { td { (term) } td.number { (plan.tape.text(*tape)) } }
                        }
                        tr.total { td { "together" } td.number { (plan.tape.text(total)) } }
                    }
                }
            } }
        }
    }
}

fn baths(plan: &Plan) -> Markup {
    html! {
        section id="baths" {
            h2 { "Baths" }
            p { "Read the cautions first. Amounts are a start for your swatch, not a promise: labels go before them." }
            @for bath in &plan.baths {
                h3 { (bath.what) " · " (bath.cloth) }
                table {
                    thead { tr { th { "For " (mass_text(bath.dry_g)) " of dry cloth" } th.number { "In all" }
                        @if bath.lots > 1 { th.number { "In each of " (bath.lots) " equal lots" } } } }
                    tbody {
                        tr {
                            td { "liquor" } td.number { (volume_text(bath.volume_ml)) }
                            @if bath.lots > 1 { td.number { (volume_text(bath.volume_ml / f64::from(bath.lots))) } }
                        }
                        @for amount in &bath.with {
                            tr {
                                td { (amount.what) ", " (amount.owf_pct) " % of the weight" }
                                td.number { (mass_text(amount.mass_g)) }
                                @if bath.lots > 1 { td.number { (mass_text(amount.mass_g / f64::from(bath.lots))) } }
                            }
                        }
                    }
                }
                @for line in &bath.how { p { (line) } }
                ul.plain {
                    @for part in &bath.components {
                        li { (part.part) " (" (part.fibre) "): " strong { (part.bears.words()) } "; " (part.why) "." }
                    }
                }
            }
        }
    }
}

fn work(plan: &Plan) -> Markup {
    // Steps of one garment that follow each other stand under its name.
    let mut groups: Vec<(usize, &[Placed])> = Vec::new();
    let mut first = 1;
    for group in plan.order.steps.chunk_by(|a, b| a.step.work == b.step.work) {
        groups.push((first, group));
        first += group.len();
    }
    html! {
        section id="work" {
            h2 { "Order of work" }
            p { "A thick bar marks a step that cannot be undone, and what to do before it." }
            @for (first, group) in groups {
                @let work = &group[0].step.work;
                h3 { @if work.is_empty() { "The whole job" } @else { (work) } }
                ol.work start=(first) {
                    @for placed in group { (step(placed)) }
                }
            }
        }
    }
}

fn step(placed: &Placed) -> Markup {
    let name = &placed.step.name;
    // Under its garment's name, the name need not be said again.
    let short = name
        .strip_prefix(&placed.step.work)
        .and_then(|rest| rest.strip_prefix(": "))
        .unwrap_or(name);
    html! {
        li {
            span.box {} " " span.what { (short) }
            @if let Some(reason) = placed.reason() { span.why { "Now, because " (reason) "." } }
            @if let Some(why) = placed.no_return {
                span.halt {
                    "Cannot be undone: " (why) "."
                    @for first in &placed.before { br; strong { "First: " } (first) }
                }
            } @else if !placed.before.is_empty() {
                span.halt { @for first in &placed.before { strong { "First: " } (first) } }
            }
        }
    }
}
