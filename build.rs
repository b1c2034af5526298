//! Has the program built anew when a file of messages comes or goes, which the folder that is
//! built in does not tell by itself.

fn main() {
    println!("cargo::rerun-if-changed=i18n");
}
