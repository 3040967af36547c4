//! How right a function is: what it gives, computed as the book is built, beside what is published or was worked by hand.

use std::fmt::Write;

use recloth_doors::{Given, Got, Row, Table, call};

use super::spec::{Bit, Spec, cell, minus};

/// What a check value rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Basis {
    Published,
    Memory,
    Practice,
    /// The library's own, where the trade has none.
    Rule,
    Hand,
    Program,
    /// An end of a range, a bad value: nothing to compare.
    Limit,
}

impl Basis {
    /// By the column `source`, as the developers' notes lay it down.
    fn of(source: &str) -> Basis {
        let rest = skip_ids(source);
        let starts = |words: &[&str]| words.iter().any(|word| rest.starts_with(word));
        if source.contains("from memory") {
            Basis::Memory
        } else if starts(&["common practice", "habit"]) {
            Basis::Practice
        } else if starts(&["argument table", "edge"]) {
            Basis::Limit
        } else if starts(&["mpmath", "independent", "program"]) || rest.contains("tests/oracle") {
            Basis::Program
        } else if starts(&["by hand", "derived", "as base"]) || is_worked(rest) {
            Basis::Hand
        } else if rest.len() == source.len() && source.starts_with(char::is_lowercase) {
            // Neither an id nor the name of an author.
            if source.contains("by hand") {
                Basis::Hand
            } else if source.contains("common practice") {
                Basis::Practice
            } else {
                Basis::Rule
            }
        } else {
            Basis::Published
        }
    }

    fn word(self) -> &'static str {
        match self {
            Basis::Published => "published",
            Basis::Memory => "from memory",
            Basis::Practice => "common practice",
            Basis::Rule => "own rule",
            Basis::Hand => "by hand",
            Basis::Program => "program",
            Basis::Limit => "limit",
        }
    }
}

/// The text behind the ids of the reference list it begins with: `K-06, K-09: a book` is `a book`.
fn skip_ids(source: &str) -> &str {
    let mut rest = source;
    while let Some((word, after)) = rest.split_once(' ') {
        let id = word.trim_end_matches([':', ',', ';']);
        let is_id = id.len() == 4
            && id.as_bytes()[1] == b'-'
            && id[2..].bytes().all(|digit| digit.is_ascii_digit());
        if !is_id && !matches!(word, "to" | "and") {
            break;
        }
        rest = after;
    }
    rest
}

/// `F27`: one of the sums worked by hand when the library was planned.
fn is_worked(source: &str) -> bool {
    source
        .strip_prefix('F')
        .and_then(|rest| rest.get(..2))
        .is_some_and(|number| number.bytes().all(|digit| digit.is_ascii_digit()))
}

/// The table of a function's check values, then what else is held to.
pub(super) fn how_right(table: &Table, spec: &Spec) -> String {
    let mut rows: Vec<(Basis, &Row)> = table
        .rows
        .iter()
        .map(|row| (Basis::of(&row.source), row))
        .collect();
    // Published ones first; the order in the file otherwise.
    rows.sort_by_key(|(basis, _)| *basis);
    let mut out = String::from("**How right it is.** ");
    if rows.iter().all(|(basis, _)| *basis != Basis::Published) {
        out.push_str("No published figure is known for it. ");
    }
    let (mut lines, mut source) = (String::new(), String::new());
    for (basis, row) in rows.iter().filter(|(basis, _)| *basis < Basis::Program) {
        source = push_row(&mut lines, table, row, spec, whose(*basis, row), &source);
    }
    if !lines.is_empty() {
        let _ = write!(
            out,
            "\n\n| given | answer | ours | held to | difference | within | source |\n|---|---|---|---|---|---|---|\n{lines}\n"
        );
    }
    let programs = rows.iter().filter(|(basis, _)| *basis == Basis::Program);
    let (count, worst) = programs.fold((0, 0.0_f64), |(count, worst), (_, row)| {
        (count + 1, worst.max(largest_share(table, row)))
    });
    if count > 0 {
        let are = if count == 1 { "One row is" } else { "rows are" };
        let number = if count == 1 {
            String::new()
        } else {
            format!("{count} ")
        };
        let _ = write!(
            out,
            "{number}{are} recomputed by an independent program, {}. ",
            share_of_tolerance(worst)
        );
    }
    let limits = rows
        .iter()
        .filter(|(basis, _)| *basis == Basis::Limit)
        .count();
    if limits > 0 {
        let rows = if limits == 1 { "row tries" } else { "rows try" };
        let _ = write!(out, "{limits} {rows} limits and bad values.");
    }
    out.push_str("\n\n");
    out
}

fn share_of_tolerance(share: f64) -> String {
    if share == 0.0 {
        "to the last bit".into()
    } else if share < 0.005 {
        "with differences below 1 % of the tolerance".into()
    } else {
        format!(
            "with differences up to {:.0} % of the tolerance",
            share * 100.0
        )
    }
}

/// Of all numbers of a row, the difference in parts of the tolerance.
fn largest_share(table: &Table, row: &Row) -> f64 {
    let (Some(tolerance), Some(Ok(answers))) =
        (row.tolerance, call(&table.function.name, &row.given))
    else {
        return 0.0;
    };
    let mut worst: f64 = 0.0;
    for (wanted, got) in row.wanted.iter().zip(answers) {
        let numbers = match got {
            Got::Number(value) => vec![value],
            Got::Numbers(values) => values,
            _ => continue,
        };
        for (word, value) in wanted.split_whitespace().zip(numbers) {
            if let Ok(wanted) = word.parse::<f64>() {
                worst = worst.max((wanted - value).abs() / tolerance);
            }
        }
    }
    worst
}

/// What a row rests on and where it is from. A source that says what it is need not be told twice.
fn whose(basis: Basis, row: &Row) -> String {
    let says = if row.source.contains(basis.word()) {
        String::new()
    } else {
        format!("{}: ", basis.word())
    };
    let note = if row.comment.is_empty() {
        String::new()
    } else {
        format!(" ({})", row.comment)
    };
    cell(&format!("{says}{}{note}", row.source))
}

/// A line for each answer that is checked; gives back `whose`, which is not said again in the row after.
fn push_row(
    out: &mut String,
    table: &Table,
    row: &Row,
    spec: &Spec,
    whose: String,
    before: &str,
) -> String {
    let name = &table.function.name;
    let cells: Vec<String> = row.given.iter().map(given_cell).collect();
    let given = minus(&cell(&short(&cells.join(", "))));
    let shown = if whose == before { "as above" } else { &whose };
    let answers = match call(name, &row.given) {
        Some(Ok(answers)) => answers,
        Some(Err(error)) => {
            let ours = format!("`{}` of `{}`", error.kind().name(), error.argument());
            let _ = writeln!(out, "| {given} |  | {ours} | the same |  |  | {shown} |");
            return whose;
        }
        None => return whose,
    };
    let mut first = true;
    for (((column, _), wanted), got) in table.function.outputs.iter().zip(&row.wanted).zip(&answers)
    {
        // Doubts and cautions are ours beside a number that is theirs.
        let names = spec.names_of_bits(name, column);
        if wanted.is_empty() || names.is_some() && table.function.outputs.len() > 1 {
            continue;
        }
        let (ours, theirs, difference) = compare(got, wanted, names);
        let within = match (row.tolerance, got) {
            (Some(tolerance), Got::Number(_) | Got::Numbers(_)) => small(tolerance),
            _ => "exact".into(),
        };
        let column = if column == "value" {
            String::new()
        } else {
            format!("`{column}`")
        };
        let (given, shown) = if first { (&*given, shown) } else { ("", "") };
        let _ = writeln!(
            out,
            "| {given} | {column} | {} | {} | {difference} | {within} | {shown} |",
            minus(&ours),
            minus(&theirs)
        );
        first = false;
    }
    whose
}

/// An argument as the file of check values has it, without an idle `.0`.
fn given_cell(given: &Given) -> String {
    let text = recloth_doors::cell(given);
    let words = text
        .split(' ')
        .map(|word| word.strip_suffix(".0").unwrap_or(word));
    words.collect::<Vec<_>>().join(" ")
}

/// Our value, theirs, and the largest difference.
fn compare(got: &Got, wanted: &str, names: Option<&[Bit]>) -> (String, String, String) {
    let numbers = match got {
        Got::Number(value) => vec![*value],
        Got::Numbers(values) => values.clone(),
        Got::Whole(set) => {
            let said = |set: u64| match names {
                Some(_) if set == 0 => String::from("none"),
                Some(names) => {
                    let known = names.iter().filter(|bit| set & bit.bit != 0);
                    known
                        .map(|bit| format!("`{}`", bit.name))
                        .collect::<Vec<_>>()
                        .join(" ")
                }
                None => set.to_string(),
            };
            let theirs = wanted.parse().map_or_else(|_| wanted.to_owned(), said);
            return (
                said(*set),
                theirs,
                if wanted.parse() == Ok(*set) {
                    "0".into()
                } else {
                    "differs".into()
                },
            );
        }
        Got::Text(text) => {
            let same = if text == wanted { "0" } else { "differs" };
            return (cell(text), cell(wanted), same.into());
        }
    };
    let words: Vec<&str> = wanted.split_whitespace().collect();
    let mut worst: f64 = 0.0;
    let mut ours = Vec::new();
    for (word, value) in words.iter().zip(&numbers) {
        worst = worst.max(
            word.parse::<f64>()
                .map_or(0.0, |wanted| (wanted - value).abs()),
        );
        ours.push(as_written(*value, word));
    }
    (short(&ours.join(" ")), short(wanted), small(worst))
}

/// A number with two decimals more than the one it is held to, and no idle zeros beyond that one's.
fn as_written(value: f64, written: &str) -> String {
    let decimals = written
        .split_once('.')
        .map_or(0, |(_, decimals)| decimals.len())
        .min(12);
    if written.contains(['e', 'E']) {
        return format!("{value:e}");
    }
    let text = format!("{value:.*}", decimals + 2);
    let bare = text.strip_suffix("00").unwrap_or(&text);
    let bare = bare.trim_end_matches('.');
    if bare == "-0" {
        "0".into()
    } else {
        bare.to_owned()
    }
}

/// A difference or a tolerance: two digits.
fn small(value: f64) -> String {
    if value == 0.0 {
        return "0".into();
    }
    if (1e-3..1e6).contains(&value) {
        let mut decimals = 0;
        let mut scaled = value;
        while scaled < 10.0 && decimals < 5 {
            scaled *= 10.0;
            decimals += 1;
        }
        let text = format!("{value:.decimals$}");
        return if text.contains('.') {
            text.trim_end_matches('0').trim_end_matches('.').to_owned()
        } else {
            text
        };
    }
    let text = format!("{value:.0e}");
    match text.split_once('e') {
        Some((digit, power)) => format!("{digit}·10<sup>{}</sup>", minus(power)),
        None => text,
    }
}

/// A long list cut short.
fn short(text: &str) -> String {
    const MOST: usize = 60;
    if text.chars().count() <= MOST {
        return text.to_owned();
    }
    let start: String = text.chars().take(MOST).collect();
    let whole = start
        .rsplit_once(' ')
        .map_or(start.as_str(), |(whole, _)| whole);
    format!("{whole} …")
}

#[cfg(test)]
mod tests {
    use super::{Basis, as_written, short, small};

    #[test]
    fn the_source_says_what_a_value_rests_on() {
        for (source, wanted) in [
            ("K-06, K-09: a book of 1911, p. 128", Basis::Published),
            ("C-60 to C-62: laundry guides that agree", Basis::Published),
            ("C-60: laundry guides; polyamide from memory", Basis::Memory),
            ("K-03: derived, waist / (2 pi fraction)", Basis::Hand),
            ("L-01: by hand 0.25 / 1", Basis::Hand),
            ("F27: unknown is refused", Basis::Hand),
            ("by hand: 2 + 2", Basis::Hand),
            ("C-71: common practice: rinse first", Basis::Practice),
            (
                "mpmath at 50 digits: tests/oracle/skirts.py",
                Basis::Program,
            ),
            (
                "IEC 61966-2-1, first column of the matrix",
                Basis::Published,
            ),
            ("plane geometry, by hand: 30 x 80 / 120", Basis::Hand),
            ("one at a time: common practice, no source", Basis::Practice),
            ("treated as the worst", Basis::Rule),
            ("argument table", Basis::Limit),
            ("edge", Basis::Limit),
        ] {
            assert_eq!(Basis::of(source), wanted, "{source}");
        }
    }

    #[test]
    fn numbers_are_as_long_as_they_need_be() {
        assert_eq!(as_written(226.00001919, "226"), "226");
        assert_eq!(as_written(226.1234, "226.1"), "226.123");
        assert_eq!(as_written(-0.0, "0"), "0");
        assert_eq!(small(0.005), "0.005");
        assert_eq!(small(1.27), "1.3");
        assert_eq!(small(175.5), "176");
        assert_eq!(small(1e-12), "1·10<sup>−12</sup>");
        assert_eq!(small(0.0), "0");
        assert!(short(&"1 ".repeat(100)).ends_with(" …"));
    }
}
