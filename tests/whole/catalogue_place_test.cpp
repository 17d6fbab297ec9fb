// Where the program finds its catalogue, and what it does when the files are lost or spoiled.
#include <filesystem>
#include <fstream>

#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

namespace fs = std::filesystem;

/// A folder tree as an installed program has it.
class CataloguePlace : public ::testing::Test {
protected:
    fs::path programs() const { return root() / "bin"; }
    fs::path requirements() const { return root() / "share" / "latchround" / "requirements"; }
    void SetUp() override {
        fs::create_directories(programs());
        fs::create_directories(requirements());
    }
    void installFiles() const {
        const fs::path shared = root() / "share" / "latchround";
        for (const char* folder : {"requirements", "boundaries"})
            fs::copy(fs::path(LATCHROUND_SOURCE "/resources") / folder, shared / folder,
                     fs::copy_options::recursive | fs::copy_options::overwrite_existing);
    }

private:
    fs::path root() const { return m_folder.path().toStdString(); }
    QTemporaryDir m_folder;
};

std::string noticeOf(const Checked<ShippedCatalogue>& shipped) {
    return shipped->notice ? ui::inOneLine(*shipped->notice) : std::string();
}

} // namespace

TEST_F(CataloguePlace, InstalledFilesAreReadWithoutANotice) {
    installFiles();
    const auto shipped = shippedCatalogue(programs());
    ASSERT_TRUE(shipped);
    EXPECT_FALSE(shipped->notice);
    EXPECT_NE(findRequirement(shipped->catalogue, "hinged-time"), nullptr);
    EXPECT_NE(findRequirement(shipped->catalogue, "plate"), nullptr);
    EXPECT_NE(findRequirement(shipped->catalogue, "h-rating"), nullptr);
    EXPECT_EQ(shipped->catalogue.upkeep.size(), 6u);
    EXPECT_EQ(shipped->catalogue.divisions.tables.size(), 14u);
}

TEST_F(CataloguePlace, SpoiledFireTablesMakeTheBuiltInCopyStandIn) {
    installFiles();
    std::ofstream(requirements() / ".." / "boundaries" / "fire_tables.json") << "{}";
    const auto shipped = shippedCatalogue(programs());
    ASSERT_TRUE(shipped);
    EXPECT_THAT(noticeOf(shipped), ::testing::HasSubstr("fire_tables.json"));
    EXPECT_EQ(shipped->catalogue.divisions.tables.size(), 14u);
}

TEST_F(CataloguePlace, SpoiledFileMakesTheBuiltInCopyStandInAndSaysWhy) {
    installFiles();
    std::ofstream(requirements() / "usage.json") << "{ spoiled";
    const auto shipped = shippedCatalogue(programs());
    ASSERT_TRUE(shipped);
    EXPECT_THAT(noticeOf(shipped), ::testing::HasSubstr("usage.json"));
    EXPECT_NE(findRequirement(shipped->catalogue, "plate"), nullptr);
}

TEST_F(CataloguePlace, MissingFileMakesTheBuiltInCopyStandIn) {
    installFiles();
    fs::remove(requirements() / "solas-passenger.json");
    const auto shipped = shippedCatalogue(programs());
    ASSERT_TRUE(shipped);
    EXPECT_THAT(noticeOf(shipped), ::testing::HasSubstr("solas-passenger.json"));
    EXPECT_NE(findRequirement(shipped->catalogue, "hinged-time"), nullptr);
}

TEST_F(CataloguePlace, BuiltInCopyIsThatOfTheFiles) {
    installFiles();
    const auto files = shippedCatalogue(programs());
    const auto built_in = builtInCatalogue();
    ASSERT_TRUE(files);
    ASSERT_TRUE(built_in);
    EXPECT_EQ(built_in->edition, files->catalogue.edition);
    ASSERT_EQ(built_in->rows.size(), files->catalogue.rows.size());
    for (std::size_t at = 0; at < built_in->rows.size(); ++at)
        EXPECT_EQ(built_in->rows[at].words, files->catalogue.rows[at].words);
}

TEST_F(CataloguePlace, EveryBadFileIsNamed) {
    const auto read =
        catalogueOfFiles({requirements() / "a.json", requirements() / "b.json"}, programs());
    ASSERT_FALSE(read);
    EXPECT_THAT(ui::inOneLine(read.error().front()), ::testing::HasSubstr("a.json"));
    EXPECT_THAT(ui::inOneLine(read.error().at(1)), ::testing::HasSubstr("b.json"));
    EXPECT_FALSE(catalogueOfFiles({}, programs()));
}

} // namespace latchround
