//! Lays a set of pieces on cloth by the length, for so many seconds, and prints the share of the cloth they cover:
//! `strip_lay FILE SECONDS`. The file's form is that of `tests/bench/lay/README.md`.

#![allow(clippy::print_stdout)] // what it is for

use std::{env, error::Error, fs};

use kurbo::Point;
use recloth_lay::{Part, Strip, StripOptions, check, strip};
use serde_json::Value;

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = env::args().skip(1).collect();
    let [file, seconds] = &words[..] else {
        return Err("usage: strip_lay FILE SECONDS".into());
    };
    let data: Value = serde_json::from_str(&fs::read_to_string(file)?)?;
    let number = |value: &Value| value.as_f64().ok_or("not a number");
    let mut parts = Vec::new();
    for item in data["items"].as_array().ok_or("no items")? {
        let mut outline = Vec::new();
        for corner in item["shape"]["data"].as_array().ok_or("no outline")? {
            outline.push(Point::new(number(&corner[0])?, number(&corner[1])?));
        }
        let turns = item["allowed_orientations"].as_array().map_or(0, Vec::len);
        parts.push(Part {
            grain_deg: 0.0,
            as_drawn: number(&item["demand"])? as u32,
            crosswise: turns == 4,
            ..Part::new(item["id"].to_string(), outline)
        });
    }
    let cloth = Strip::new(number(&data["strip_height"])?);
    let options = StripOptions {
        seconds: Some(seconds.parse()?),
        budget: u64::MAX,
        threads: 2,
        ..StripOptions::default()
    };
    let found = strip(&parts, &cloth, &options)?;
    check(&parts, &[cloth.panel(found.length)?], &found.lay)
        .map_err(|complaints| format!("{complaints:?}"))?;
    println!("{}", found.density);
    Ok(())
}
