#pragma once
#include <string>
#include <vector>

#include "report/page.hpp"

namespace waxtab {

/// Puts a report into a folder so that whoever looks finds the whole old or the whole new one, whatever happens
/// on the way. The new report is written to a folder beside it, named `.FOLDER.new`, brought to the disk, and the
/// two change places in one step (renameat2 with RENAME_EXCHANGE). Where the file system knows no such step, the old
/// folder is renamed to `.FOLDER.old` and the new one to its name; killed between the two, both reports are whole
/// beside each other, and the next run puts things right. A folder that holds anything else is left alone: the report
/// wants one of its own. Returns why it could not, in words; empty when all went well.
std::string put_report(const std::string& folder, const std::vector<ReportFile>& files);

/// True when the folder holds just these files with just these bytes.
bool holds_report(const std::string& folder, const std::vector<ReportFile>& files);

}  // namespace waxtab
