//! Numbers in the text, taken from the rows the tests check.
//!
//! `{{#vector circle_skirt base waist_radius}}` stands for that cell of `tests/vectors/circle_skirt.csv` as it is
//! written there; a number after it asks for so many decimals.

use std::path::Path;

use crate::directive;

/// `text` with every `{{#vector …}}` replaced, from the CSV files in `vectors`.
///
/// # Errors
/// A sentence naming the directive, where the file, the row or the column is missing or its cell is no number.
pub fn expand(text: &str, vectors: &Path) -> Result<String, String> {
    directive::expand(text, "vector", |words| number(words, vectors))
}

fn number(words: &str, vectors: &Path) -> Result<String, String> {
    let words: Vec<&str> = words.split_whitespace().collect();
    let (name, row, column, decimals) = match words[..] {
        [name, row, column] => (name, row, column, None),
        [name, row, column, decimals] => {
            let decimals: usize = decimals
                .parse()
                .map_err(|_| format!("`{decimals}` is not a number of decimals"))?;
            (name, row, column, Some(decimals))
        }
        _ => return Err("wants FUNCTION ROW COLUMN and perhaps DECIMALS".into()),
    };
    let cell = cell(&vectors.join(format!("{name}.csv")), row, column)?;
    let value: f64 = cell.parse().map_err(|_| format!("`{cell}` is no number"))?;
    Ok(match decimals {
        // A minus sign as print has it.
        Some(decimals) => format!("{value:.decimals$}").replace('-', "−"),
        None => cell.replace('-', "−"),
    })
}

/// One cell of a CSV file, by the row's id and the column's name.
fn cell(file: &Path, row: &str, column: &str) -> Result<String, String> {
    let mut reader = csv::Reader::from_path(file).map_err(|error| error.to_string())?;
    let headers = reader.headers().map_err(|error| error.to_string())?.clone();
    let at = headers
        .iter()
        .position(|header| header == column)
        .ok_or_else(|| format!("there is no column `{column}`"))?;
    for record in reader.records() {
        let record = record.map_err(|error| error.to_string())?;
        if record.get(0) == Some(row) {
            return Ok(record.get(at).unwrap_or_default().to_owned());
        }
    }
    Err(format!("there is no row `{row}`"))
}

#[cfg(test)]
mod tests {
    use std::path::PathBuf;

    use super::expand;

    fn vectors() -> PathBuf {
        PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../tests/vectors")
    }

    #[test]
    fn a_cell_is_shown_as_written_or_rounded() {
        let text =
            "r {{#vector circle_skirt base waist}} mm, {{#vector circle_skirt base waist 1}}.";
        assert_eq!(expand(text, &vectors()).unwrap(), "r 710 mm, 710.0.");
    }

    #[test]
    fn what_is_missing_is_named() {
        for (text, wanted) in [
            ("{{#vector circle_skirt base bust}}", "`bust`"),
            ("{{#vector circle_skirt none waist}}", "`none`"),
            ("{{#vector circle_skirt base source}}", "no number"),
            ("{{#vector circle_skirt base}}", "wants"),
            ("{{#vector circle_skirt base waist x}}", "`x`"),
            ("{{#vector nothing base waist}}", "nothing"),
            ("{{#vector circle_skirt", "not closed"),
        ] {
            let error = expand(text, &vectors()).unwrap_err();
            assert!(error.contains(wanted), "{text}: {error}");
        }
    }
}
