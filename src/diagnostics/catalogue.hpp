#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "diagnostics/diagnostic.hpp"

namespace waxtab {

/// What the manual says of one code: every diagnostic's `code` has an entry.
struct CatalogueEntry {
    std::string_view code;
    Severity severity = Severity::error;
    std::string_view means;     ///< one or two sentences
    std::string_view example;   ///< journal lines that bring it about; may have several
    std::string_view remedy;    ///< what to do
};

/// All entries, by code.
const std::vector<CatalogueEntry>& catalogue();
/// The entry of a code; null when there is none.
const CatalogueEntry* catalogue_entry(std::string_view code);
/// An entry as `check --explain` prints it.
std::string catalogue_text(const CatalogueEntry& entry);
/// All entries as a page of the manual, in Markdown.
std::string catalogue_page();

}  // namespace waxtab
