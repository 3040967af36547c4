//! Panels of cloth: made in each way, cut down to what is usable, refused where they are none. Figures are worked by hand
//! beside each check; the cloth is invented.

mod made;
mod path;
#[path = "../random/mod.rs"]
mod random;
mod usable;
