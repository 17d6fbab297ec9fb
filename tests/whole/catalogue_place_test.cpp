// Where the program finds its catalogue, and what it does when the files are lost or spoiled.
#include <filesystem>
#include <fstream>

#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"

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
        for (const char* name : {"solas-passenger.json", "practice.json"})
            fs::copy(fs::path(LATCHROUND_SOURCE "/resources/requirements") / name,
                     requirements() / name);
    }

private:
    fs::path root() const { return m_folder.path().toStdString(); }
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(CataloguePlace, InstalledFilesAreReadWithoutANotice) {
    installFiles();
    const auto shipped = shippedCatalogue(programs());
    ASSERT_TRUE(shipped);
    EXPECT_EQ(shipped->notice, "");
    EXPECT_NE(findRequirement(shipped->catalogue, "hinged-time"), nullptr);
    EXPECT_NE(findRequirement(shipped->catalogue, "plate"), nullptr);
}

TEST_F(CataloguePlace, SpoiledFileMakesTheBuiltInCopyStandInAndSaysWhy) {
    installFiles();
    std::ofstream(requirements() / "practice.json") << "{ spoiled";
    const auto shipped = shippedCatalogue(programs());
    ASSERT_TRUE(shipped);
    EXPECT_THAT(shipped->notice, ::testing::HasSubstr("practice.json"));
    EXPECT_NE(findRequirement(shipped->catalogue, "plate"), nullptr);
}

TEST_F(CataloguePlace, MissingFileMakesTheBuiltInCopyStandIn) {
    installFiles();
    fs::remove(requirements() / "solas-passenger.json");
    const auto shipped = shippedCatalogue(programs());
    ASSERT_TRUE(shipped);
    EXPECT_THAT(shipped->notice, ::testing::HasSubstr("solas-passenger.json"));
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
    const auto read = catalogueOfFiles({requirements() / "a.json", requirements() / "b.json"});
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().size(), 2u);
    EXPECT_FALSE(catalogueOfFiles({}));
}

} // namespace latchround
