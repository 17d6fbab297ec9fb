// Handover files of a fleet, in a folder.
#pragma once

#include <string>
#include <vector>

#include <QTemporaryDir>

#include "app/ashore/collector.h"
#include "tests/handover/tablet.h"

namespace latchround::test {

const Catalogue& shipped();

/// A tablet with one of the sample vessels and its history.
Tablet sampleVessel(const std::string& name);

class Files {
public:
    std::string put(const std::string& name, const std::string& bytes);
    std::string path(const std::string& name) const;
    /// So many small vessels with a short walk each.
    std::vector<std::string> smallVessels(int count);

private:
    QTemporaryDir m_folder;
};

/// Takes the files; each must go in.
void collect(const DatabaseUrl& url, const std::vector<std::string>& files);

} // namespace latchround::test
