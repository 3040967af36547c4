//! Gives the shared library its name for the linker, so that programs find the library they were compiled for.

use std::env;

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    let version = |part| env::var(format!("CARGO_PKG_VERSION_{part}")).unwrap_or_default();
    // As in the first line of abi.txt: what has one name here is compatible for cargo too.
    let number = match version("MAJOR").as_str() {
        "0" => format!("0.{}", version("MINOR")),
        major => major.to_owned(),
    };
    match env::var("CARGO_CFG_TARGET_OS").unwrap_or_default().as_str() {
        "linux" | "freebsd" | "netbsd" | "openbsd" | "android" => {
            println!("cargo::rustc-cdylib-link-arg=-Wl,-soname,librecloth.so.{number}");
        }
        "macos" => {
            println!(
                "cargo::rustc-cdylib-link-arg=-Wl,-install_name,@rpath/librecloth.{number}.dylib"
            );
        }
        _ => {}
    }
}
