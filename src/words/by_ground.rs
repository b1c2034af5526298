//! The messages of one language on every ground.
//!
//! A rim is named by the ground: bottom ring and top ring of a tube, near and far end of a rail, outer and
//! inner circle of a mat. The words for it stand as terms in the messages of all grounds; a ground has
//! a file in `i18n/<tag>/grounds/` that says them anew, and with them the few messages that differ whole.

use std::sync::{Arc, OnceLock};

use fluent::FluentResource;
use fluent::concurrent::FluentBundle;
use include_dir::{Dir, File, include_dir};
use strum::IntoEnumIterator;
use unic_langid::LanguageIdentifier;

use super::numbers::formatted;
use super::pseudo::{is_pseudo, lengthened};
use crate::guide::RimNames;

/// A folder for each language.
pub(super) static MESSAGES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/i18n");

type Bundle = FluentBundle<Arc<FluentResource>>;

/// A language: what all grounds have in common is read once, and a ground when it is asked for.
pub(super) struct ByGround {
    tag: LanguageIdentifier,
    locale: LanguageIdentifier,
    common: Vec<Arc<FluentResource>>,
    grounds: Vec<(RimNames, OnceLock<Bundle>)>,
    tube: Bundle,
}

impl ByGround {
    /// The messages of a language, with numbers in the pattern of a locale.
    pub(super) fn of(tag: &LanguageIdentifier, locale: &LanguageIdentifier) -> Self {
        let folder = MESSAGES.get_dir(tag.to_string());
        let files = folder.into_iter().flat_map(Dir::files);
        let common: Vec<_> = files.map(resource).collect();
        let others = RimNames::iter().filter(|rims| *rims != RimNames::BottomTop);
        Self {
            tube: bundle(locale, &common, None),
            tag: tag.clone(),
            locale: locale.clone(),
            common,
            grounds: others.map(|rims| (rims, OnceLock::new())).collect(),
        }
    }

    /// The messages where the rims are called this.
    pub(super) fn bundle(&self, rims: RimNames) -> &Bundle {
        let mut grounds = self.grounds.iter();
        let Some((_, ground)) = grounds.find(|(known, _)| *known == rims) else {
            return &self.tube;
        };
        ground.get_or_init(|| {
            let name: &str = rims.into();
            let path = format!("{}/grounds/{name}.ftl", self.tag);
            let own = MESSAGES.get_file(&path).map(resource);
            if own.is_none() {
                log::error!("{path} is missing");
            }
            bundle(&self.locale, &self.common, own)
        })
    }
}

fn resource(file: &File<'_>) -> Arc<FluentResource> {
    let path = file.path().display();
    let source = String::from_utf8_lossy(file.contents()).into_owned();
    let resource = FluentResource::try_new(source).unwrap_or_else(|(resource, faults)| {
        log::error!("{path}: {faults:?}");
        debug_assert!(faults.is_empty(), "{path}: {faults:?}");
        resource
    });
    Arc::new(resource)
}

/// The messages that all grounds have in common, and over them those of one ground.
fn bundle(
    locale: &LanguageIdentifier,
    common: &[Arc<FluentResource>],
    own: Option<Arc<FluentResource>>,
) -> Bundle {
    let mut bundle = FluentBundle::new_concurrent(vec![locale.clone()]);
    bundle.set_formatter(Some(formatted));
    if is_pseudo(locale) {
        bundle.set_transform(Some(lengthened));
    }
    // The marks that isolate an insert are for mixed writing directions; a voice stumbles
    // over them.
    bundle.set_use_isolating(false);
    for resource in common {
        if let Err(faults) = bundle.add_resource(Arc::clone(resource)) {
            log::error!("{locale}: {faults:?}");
            debug_assert!(faults.is_empty(), "{locale}: {faults:?}");
        }
    }
    if let Some(own) = own {
        bundle.add_resource_overriding(own);
    }
    bundle
}
