#include "app/desktop/file_dialog.h"

#include <QAbstractFileIconProvider>
#include <QApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QStyle>

namespace latchround {

namespace {

/// By what the folder says of an entry, never by what is in it.
class PlainEntries : public QAbstractFileIconProvider {
public:
    QIcon icon(IconType type) const override { return type == File ? m_file : m_folder; }
    QIcon icon(const QFileInfo& entry) const override {
        return icon(entry.isDir() ? Folder : File);
    }
    QString type(const QFileInfo& entry) const override {
        return entry.isDir() ? QString() : entry.suffix();
    }

private:
    // Asked for by a thread of the dialog, which must not ask the style.
    QIcon m_file = QApplication::style()->standardIcon(QStyle::SP_FileIcon);
    QIcon m_folder = QApplication::style()->standardIcon(QStyle::SP_DirIcon);
};

QString asked(QFileDialog& dialog, PlainEntries& entries) {
    dialog.setOption(QFileDialog::DontUseNativeDialog);
    dialog.setOption(QFileDialog::DontUseCustomDirectoryIcons);
    dialog.setIconProvider(&entries);
    const bool chosen = dialog.exec() == QDialog::Accepted && !dialog.selectedFiles().isEmpty();
    return chosen ? dialog.selectedFiles().constFirst() : QString();
}

} // namespace

QString askForFile(QWidget* parent, const QString& title, const QString& folder,
                   const QString& filter) {
    PlainEntries entries; // outlives the dialog and its thread
    QFileDialog dialog(parent, title, folder, filter);
    dialog.setFileMode(QFileDialog::ExistingFile);
    return asked(dialog, entries);
}

QString askWhereToSave(QWidget* parent, const QString& title, const QString& proposed,
                       const QString& filter) {
    const QFileInfo file(proposed);
    PlainEntries entries; // outlives the dialog and its thread
    QFileDialog dialog(parent, title, file.absolutePath(), filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.selectFile(file.fileName());
    return asked(dialog, entries);
}

} // namespace latchround
