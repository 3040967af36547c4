//! The C library as it is installed: a folder with the library under its soname, the header, and what pkg-config and CMake
//! look for. Tried by programs that know nothing else of the project, from another place than it was made in.

use std::{fs, path::Path, process::Command};

use crate::{
    abi,
    test::{
        c,
        run::{Context, Count, output, quiet},
    },
};

const VERSION: &str = env!("CARGO_PKG_VERSION");

/// What the archive needs besides, as `rustc --print native-static-libs` says for Linux with glibc.
const STATIC: &[&str] = &["gcc_s", "util", "rt", "pthread", "m", "dl", "c"];

/// The release's library, in `target/dist/prefix`.
pub(crate) fn whole(context: &Context) -> Result<Count, String> {
    quiet(context.cargo("build --quiet --release -p recloth-c"))?;
    let prefix = context.target.join("dist/prefix");
    if prefix.exists() {
        fs::remove_dir_all(&prefix).map_err(|error| format!("{}: {error}", prefix.display()))?;
    }
    install(context, &context.target.join("release"), &prefix)?;
    println!("{}", prefix.display());
    tried(context, &prefix)
}

/// The library of the tests, in a folder of theirs.
pub(crate) fn quick(context: &Context) -> Result<Count, String> {
    let built = c::library(context)?;
    let prefix = context.fresh("prefix")?;
    install(context, &built, &prefix)?;
    tried(context, &prefix)
}

fn install(context: &Context, built: &Path, prefix: &Path) -> Result<(), String> {
    let c = context.root.join("bindings/c");
    let list = fs::read_to_string(context.root.join(abi::LIST))
        .map_err(|error| format!("{}: {error}", abi::LIST))?;
    let soname = abi::soname_of(&list);
    let library = format!("librecloth.so.{VERSION}");
    copy(
        &built.join("librecloth.so"),
        &prefix.join("lib").join(&library),
    )?;
    copy(
        &built.join("librecloth.a"),
        &prefix.join("lib/librecloth.a"),
    )?;
    link(&library, &prefix.join("lib").join(soname))?;
    link(soname, &prefix.join("lib/librecloth.so"))?;
    copy(
        &c.join("include/recloth.h"),
        &prefix.join("include/recloth.h"),
    )?;
    copy(
        &context.root.join("LICENSE"),
        &prefix.join("share/doc/recloth/LICENSE"),
    )?;
    let dashed: Vec<String> = STATIC.iter().map(|name| format!("-l{name}")).collect();
    for (template, place, libraries) in [
        ("recloth.pc", "lib/pkgconfig", dashed.join(" ")),
        (
            "recloth-config.cmake",
            "lib/cmake/recloth",
            STATIC.join(";"),
        ),
        (
            "recloth-config-version.cmake",
            "lib/cmake/recloth",
            String::new(),
        ),
    ] {
        let source = c.join("install").join(format!("{template}.in"));
        let text = fs::read_to_string(&source)
            .map_err(|error| format!("{}: {error}", source.display()))?
            .replace("@VERSION@", VERSION)
            .replace("@SONAME@", soname)
            .replace("@OLDEST@", soname.trim_start_matches("librecloth.so."))
            .replace("@STATIC@", &libraries);
        write(&prefix.join(place).join(template), &text)?;
    }
    Ok(())
}

fn write(path: &Path, text: &str) -> Result<(), String> {
    parent(path)?;
    fs::write(path, text).map_err(|error| format!("{}: {error}", path.display()))
}

fn copy(from: &Path, to: &Path) -> Result<(), String> {
    parent(to)?;
    fs::copy(from, to)
        .map(drop)
        .map_err(|error| format!("{}: {error}", from.display()))
}

fn link(target: &str, link: &Path) -> Result<(), String> {
    std::os::unix::fs::symlink(target, link).map_err(|error| format!("{}: {error}", link.display()))
}

fn parent(path: &Path) -> Result<(), String> {
    let folder = path.parent().unwrap_or(path);
    fs::create_dir_all(folder).map_err(|error| format!("{}: {error}", folder.display()))
}

/// Six checks: soname, symbols, and a program built by pkg-config and two by CMake, which must fail where nothing is found.
fn tried(context: &Context, prefix: &Path) -> Result<Count, String> {
    for (name, package) in [
        ("gcc", "gcc libc6-dev"),
        ("pkg-config", "pkg-config"),
        ("cmake", "cmake make"),
    ] {
        if let Err(what) = context.program(name, package) {
            return Ok(Count::skipped(&what));
        }
    }
    let folder = context.fresh("installed")?;
    let elsewhere = folder.join("moved here");
    quiet(context.command("cp", [Path::new("-a"), prefix, &elsewhere]))?;
    agrees(context, &elsewhere)?;
    by_pkg_config(context, &folder, &elsewhere)?;
    by_cmake(context, &folder, &elsewhere)?;
    Ok(Count::passed(6))
}

/// The library has the soname and exports the functions that `abi.txt` lists, and no others.
fn agrees(context: &Context, prefix: &Path) -> Result<(), String> {
    let list =
        fs::read_to_string(context.root.join(abi::LIST)).map_err(|error| error.to_string())?;
    let library = prefix.join("lib/librecloth.so");
    let header = output(
        context
            .command("readelf", ["--dynamic", "--wide"])
            .arg(&library),
    )?;
    let soname = abi::soname_of(&list);
    if soname != abi::soname(VERSION) {
        return Err(format!(
            "{} begins with {soname}, but the version is {VERSION}",
            abi::LIST
        ));
    }
    if !header.contains(&format!("soname: [{soname}]")) {
        return Err(format!("the library's soname is not {soname}:\n{header}"));
    }
    let symbols = output(
        context
            .command("nm", ["--dynamic", "--defined-only", "--just-symbols"])
            .arg(&library),
    )?;
    let mut there: Vec<&str> = symbols
        .lines()
        .filter(|name| name.starts_with("recloth_"))
        .collect();
    let mut wanted = abi::functions(&list);
    there.sort_unstable();
    wanted.sort_unstable();
    if there != wanted {
        let odd = |a: &[&str], b: &[&str]| -> Vec<String> {
            a.iter()
                .filter(|name| !b.contains(name))
                .map(|name| (*name).to_owned())
                .collect()
        };
        return Err(format!(
            "{} and the library differ: only listed {:?}, only exported {:?}",
            abi::LIST,
            odd(&wanted, &there),
            odd(&there, &wanted)
        ));
    }
    Ok(())
}

const PROGRAM: &str = "bindings/c/tests/installed";

fn says(context: &Context, program: &Path) -> Result<(), String> {
    let said = output(&mut context.command(program, [""; 0]))?;
    // 710 / (2 pi 0.5) = 226.0
    if said == format!("recloth {VERSION}: 226.0\n") {
        Ok(())
    } else {
        Err(format!("{} says {said}", program.display()))
    }
}

fn by_pkg_config(context: &Context, folder: &Path, prefix: &Path) -> Result<(), String> {
    let ask = |at: &Path, words: &[&str]| {
        let mut command = context.command("pkg-config", words);
        // Only there, so that nothing installed on this machine helps.
        command
            .arg("recloth")
            .env("PKG_CONFIG_LIBDIR", at)
            .env_remove("PKG_CONFIG_PATH");
        command
    };
    if succeeds(&mut ask(folder, &["--exists"])) {
        return Err("pkg-config finds the library where it is not".into());
    }
    let there = prefix.join("lib/pkgconfig");
    let flags = output(&mut ask(&there, &["--cflags", "--libs"]))?;
    let libraries = output(&mut ask(&there, &["--variable=libdir"]))?;
    let program = folder.join("by-pkg-config");
    let mut compile = context.command("gcc", c::STRICT);
    compile
        .arg("-std=c99")
        .arg(context.root.join(PROGRAM).join("main.c"))
        .args(words(&flags))
        .arg(format!("-Wl,-rpath,{}", words(&libraries).join(" ")))
        .arg("-o")
        .arg(&program);
    quiet(compile)?;
    says(context, &program)?;
    let needed = output(
        context
            .command("readelf", ["--dynamic", "--wide"])
            .arg(&program),
    )?;
    let soname = abi::soname(VERSION);
    if !needed.contains(&format!("[{soname}]")) {
        return Err(format!("the program does not ask for {soname}:\n{needed}"));
    }
    Ok(())
}

/// What pkg-config prints, with the blanks it wrote as `\ ` kept.
fn words(line: &str) -> Vec<String> {
    let kept = line.trim().replace("\\ ", "\u{0}");
    kept.split_whitespace()
        .map(|word| word.replace('\u{0}', " "))
        .collect()
}

fn by_cmake(context: &Context, folder: &Path, prefix: &Path) -> Result<(), String> {
    let configure = |build: &Path, at: &Path| {
        let mut command = context.command("cmake", ["-S", PROGRAM, "-B"]);
        command
            .arg(build)
            .arg(format!("-DCMAKE_PREFIX_PATH={}", at.display()))
            .args([
                "-DCMAKE_FIND_USE_PACKAGE_REGISTRY=OFF",
                "-DCMAKE_FIND_USE_SYSTEM_PACKAGE_REGISTRY=OFF",
            ])
            .env_remove("CMAKE_PREFIX_PATH");
        command
    };
    if succeeds(&mut configure(&folder.join("nowhere"), folder)) {
        return Err("CMake finds the library where it is not".into());
    }
    let build = folder.join("by-cmake");
    quiet(configure(&build, prefix))?;
    let mut make = context.command("cmake", ["--build"]);
    make.arg(&build);
    quiet(make)?;
    says(context, &build.join("shared"))?;
    says(context, &build.join("static"))
}

fn succeeds(command: &mut Command) -> bool {
    command.output().is_ok_and(|run| run.status.success())
}
