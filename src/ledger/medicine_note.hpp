#pragma once
#include <string>
#include <string_view>

namespace waxtab {

/// What a treatment's free words say of the medicine, as `batch 17A, from the vet, withdrawal 0 days`.
struct MedicineNote {
    std::string product;    ///< words without a name before them
    std::string batch, supplier, withdrawal;
};

/// Parts are separated by commas or semicolons; `batch`, `supplier`, `bought from`, `from`, `withdrawal period`,
/// `withdrawal` name them, large and small letters alike.
MedicineNote medicine_note(std::string_view text);

}  // namespace waxtab
