#include "app/exchange/catalogue_file.h"

#include <filesystem>
#include <fstream>

#include <gtest/gtest.h>

#include "app/exchange/file_bytes.h"
#include "core/error/reading_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

namespace fs = std::filesystem;

class CatalogueFile : public testing::Test {
protected:
    void SetUp() override {
        m_folder = fs::path(testing::TempDir()) /
                   (std::string("catalogue-") +
                    testing::UnitTest::GetInstance()->current_test_info()->name());
        fs::create_directories(m_folder);
    }
    void TearDown() override { fs::remove_all(m_folder); }

    fs::path write(const std::string& text) {
        const fs::path path = m_folder / "rows.json";
        std::ofstream(path, std::ios::binary) << text;
        return path;
    }

    fs::path m_folder;
};

TEST_F(CatalogueFile, TheProgramsOwnFilesAreRead) {
    const fs::path folder = fs::path(LATCHROUND_SOURCE) / "resources/requirements";
    const auto catalogue = catalogueFromFile(folder / "solas-passenger.json");
    ASSERT_TRUE(catalogue) << ui::inOneLine(catalogue.error().front());
    EXPECT_NE(findRequirement(*catalogue, "sliding-rate"), nullptr);
    EXPECT_FALSE(catalogue->edition.empty());
}

TEST_F(CatalogueFile, NotThere) {
    const auto catalogue = catalogueFromFile(m_folder / "none.json");
    ASSERT_FALSE(catalogue);
    EXPECT_EQ(catalogue.error().front().where, (m_folder / "none.json").string());
    EXPECT_EQ(catalogue.error().front().what, errors::no_such_file());
}

TEST_F(CatalogueFile, FolderIsNotAFile) {
    const auto catalogue = catalogueFromFile(m_folder);
    ASSERT_FALSE(catalogue);
    EXPECT_EQ(catalogue.error().front().what, errors::folder_not_file());
}

TEST_F(CatalogueFile, FaultsInTheFileBearItsName) {
    const fs::path path = write("{}");
    const auto catalogue = catalogueFromFile(path);
    ASSERT_FALSE(catalogue);
    for (const Error& error : catalogue.error())
        EXPECT_EQ(error.where.parts.front(), path.string()) << ui::inOneLine(error);
}

TEST_F(CatalogueFile, BytesComeAsTheyAreUpToTheLimit) {
    const std::string bytes("a\r\n\0b\xFF", 6);
    const fs::path path = write(bytes);
    EXPECT_EQ(bytesOf(path, 6).value(), bytes);
    EXPECT_EQ(bytesOf(path, 5).error().what, errors::file_too_large(0));
    EXPECT_EQ(bytesOf(write(""), 5).value(), "");
}

TEST_F(CatalogueFile, DeviceIsNotReadForEver) {
    const auto bytes = bytesOf("/dev/zero", 1000);
    ASSERT_FALSE(bytes);
    EXPECT_EQ(bytes.error().what, errors::not_readable_file());
}

} // namespace
} // namespace latchround
