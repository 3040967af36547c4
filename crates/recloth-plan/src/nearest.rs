//! The nearest of the names offered, for "is … meant?".

/// The name nearest to `wanted`, if any is near enough to be a slip of it.
pub(crate) fn nearest<'a>(
    wanted: &str,
    names: impl IntoIterator<Item = &'a str>,
) -> Option<&'a str> {
    let wanted = wanted.to_lowercase();
    let mut best: Option<(usize, &str)> = None;
    for name in names {
        let distance = strsim::damerau_levenshtein(&wanted, &name.to_lowercase());
        if best.is_none_or(|(least, _)| distance < least) {
            best = Some((distance, name));
        }
    }
    // Common practice: a third of the letters wrong is a slip, more is another word.
    best.filter(|(distance, name)| *distance <= name.chars().count().max(3) / 3 + 1)
        .map(|(_, name)| name)
}

#[cfg(test)]
mod tests {
    use super::nearest;

    #[test]
    fn a_slip_is_found_and_another_word_is_not() {
        let names = ["waist", "hip", "length"];
        assert_eq!(nearest("waits", names), Some("waist"));
        assert_eq!(nearest("Lenght", names), Some("length"));
        assert_eq!(nearest("collar stand", names), None);
        assert_eq!(nearest("waist", []), None);
    }
}
