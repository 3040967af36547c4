//! A brief: one with a little of it changed, or any text.

use arbitrary::Result;

use crate::input::Input;

/// A short brief that has a plan.
const GOOD: &str = include_str!("../../../crates/recloth-plan/src/example.toml");

/// What may give in it: a strap, which mostly fits, and a skirt.
const GIVES: &str = "
[[may_give]]
piece = \"pinafore strap\"
join_from = \"10 cm\"
join_to = \"40 cm\"
[[may_give]]
piece = \"pinafore strap\"
tilt_to_deg = 30
[[may_give]]
piece = \"pinafore skirt\"
shorter_by = \"5 cm\"
shorter_at = \"12 cm\"
";

pub(crate) fn target(input: &mut Input) -> Result<()> {
    let text = if input.once_in(8)? {
        String::from_utf8_lossy(input.0.bytes(input.0.len())?).into_owned()
    } else {
        changed(input)?
    };
    match recloth_plan::plan(&text, "brief.toml") {
        Ok(plan) => {
            // A drawing may be beyond what a page can hold: then it says so.
            match plan.files() {
                Ok(files) => assert!(files.iter().all(|(_, bytes)| !bytes.is_empty())),
                Err(error) => assert!(!error.to_string().is_empty()),
            }
            assert!(plan.too_large().len() <= plan.lays.len() + plan.pieces.len());
            let wanted = plan.count() as usize;
            let without: u32 = plan.unplaced().iter().map(|(_, count)| count).sum();
            assert!(without as usize <= wanted);
            for laid in &plan.lays {
                // What gives lets all pieces lie, as the checker sees it.
                if let Some((_, parts, fit)) = laid.given.as_ref().and_then(|given| given.changed())
                {
                    assert!(fit.lay.unplaced.is_empty());
                    let checked = recloth_lay::check(parts, &laid.panels, &fit.lay);
                    assert_eq!(checked, Ok(()), "{text}");
                }
            }
        }
        Err(error) => {
            let told = error.to_string();
            assert!(told.starts_with("brief.toml"), "{told}");
        }
    }
    Ok(())
}

/// The good brief with lines left out, twice, elsewhere, or with another value.
fn changed(input: &mut Input) -> Result<String> {
    let hidden = GOOD.replace(
        "clear = \"5 mm\" }",
        "clear = \"5 mm\", under = [\"seam allowance\"] }",
    );
    let mut lines: Vec<String> = match input.index(3)? {
        0 => GOOD.lines().map(str::to_owned).collect(),
        _ => (hidden.lines().chain(GIVES.lines()))
            .map(str::to_owned)
            .collect(),
    };
    for _ in 0..input.index(5)? {
        let at = input.index(lines.len())?;
        let other = input.index(lines.len())?;
        match input.index(6)? {
            0 => drop(lines.remove(at)),
            1 => lines.insert(other, lines[at].clone()),
            2 => lines.swap(at, other),
            3 => {
                let ends = lines[at].clone();
                lines[at] = input.text(&ends)?;
            }
            _ => {
                if let Some((key, old)) = lines[at].split_once(" = ") {
                    let value = value(old, input)?;
                    lines[at] = format!("{key} = {value}");
                }
            }
        }
    }
    Ok(lines.join("\n"))
}

fn value(old: &str, input: &mut Input) -> Result<String> {
    let number = input.number([0.0, 500.0], &[0.0, 1.0, 30.0])?;
    let unit = *input.0.choose(&["mm", "cm", "in", "m", "%", ""])?;
    Ok(match input.index(6)? {
        0 => number.to_string(),
        1 => format!("{}", number as i64),
        2 => format!("\"{number} {unit}\""),
        3 => format!("\"{} {unit}\"", number as i64),
        4 => input.text(old)?,
        _ => format!("[{old}]"),
    })
}
