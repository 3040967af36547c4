//! Which rows of the reference list the check values meet.
//!
//! The list is of numbers published outside the project; each has an id, a capital letter and two digits (`B-12`), and
//! stands in the column `source` of the rows that are held to it. `C-60 to C-62` names all between. Letters: U units,
//! buttons, needles and yarns; B bodies; D darts; K circles, gores and cones; G gathers and pleats; F bias; H buttonholes;
//! S seams and hems; W washing; Y widths of cloth; C colouring and bleaching; L light and colour; M mass of cloth; P the
//! pairs of the colour difference paper.

use std::collections::BTreeSet;

use crate::Table;

/// The ids that a source names.
pub fn ids(source: &str) -> BTreeSet<String> {
    let words: Vec<&str> = source
        .split_whitespace()
        .map(|word| word.trim_matches(|mark: char| !mark.is_ascii_alphanumeric()))
        .collect();
    let mut found = BTreeSet::new();
    for (index, word) in words.iter().enumerate() {
        let Some((letter, number)) = id(word) else {
            continue;
        };
        let through = match words.get(index + 1..index + 3) {
            Some(&["to", last]) => id(last).filter(|&(other, _)| other == letter),
            _ => None,
        };
        let last = through.map_or(number, |(_, last)| last.max(number));
        found.extend((number..=last).map(|number| format!("{letter}-{number:02}")));
    }
    found
}

/// The letter and the number of an id, if the word is one.
fn id(word: &str) -> Option<(char, u8)> {
    let (letter, number) = word.split_once('-')?;
    let mut letters = letter.chars();
    let letter = letters.next().filter(char::is_ascii_uppercase)?;
    let two_digits = number.len() == 2 && number.bytes().all(|digit| digit.is_ascii_digit());
    (letters.next().is_none() && two_digits)
        .then(|| number.parse().ok().map(|number| (letter, number)))?
}

/// The ids that the rows of all tables name, each once.
pub fn met(tables: &[Table]) -> BTreeSet<String> {
    let rows = tables.iter().flat_map(|table| &table.rows);
    rows.flat_map(|row| ids(&row.source)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(source: &str) -> Vec<String> {
        ids(source).into_iter().collect()
    }

    #[test]
    fn ids_are_read_wherever_they_stand() {
        assert_eq!(named("K-06, K-09: a book, p. 128"), ["K-06", "K-09"]);
        assert_eq!(
            named("by hand: 22/2 - 3 = 8; start H-04: a manual (L-01)"),
            ["H-04", "L-01"]
        );
        assert_eq!(named("B-14 and B-11: a survey"), ["B-11", "B-14"]);
        assert_eq!(
            named("C-60 to C-62: laundry guides"),
            ["C-60", "C-61", "C-62"]
        );
        assert_eq!(named("C-62 to C-60"), ["C-60", "C-62"]);
    }

    #[test]
    fn other_words_are_no_ids() {
        for source in [
            "F27: a sum worked by hand",
            "by hand 40 - 10",
            "ISO 5077:2007; NATICK/TR-15/007; A-249; K-6; k-06; KK-06; K-0x; K-",
            "mpmath at 50 digits: tests/oracle/trade.py",
        ] {
            assert_eq!(named(source), [""; 0], "{source}");
        }
    }

    #[test]
    fn the_published_tables_are_met_whole() {
        let met = met(&crate::tables());
        let all = |letter: char, numbers: std::ops::RangeInclusive<u32>| {
            let missing: Vec<String> = numbers
                .map(|number| format!("{letter}-{number:02}"))
                .filter(|id| !met.contains(id))
                .collect();
            assert_eq!(missing, [""; 0]);
        };
        // The bias table of 1916, the width table, the survey's girths, the pairs of the colour difference paper.
        all('F', 1..=17);
        all('Y', 1..=9);
        all('B', 10..=26);
        all('P', 1..=34);
    }
}
