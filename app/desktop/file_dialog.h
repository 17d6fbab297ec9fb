// Asks for a file. Unlike Qt's own, this dialog looks into no file to tell what kind it is: to open
// and close a register drops the locks that this program holds on it.
#pragma once

#include <QString>

class QWidget;

namespace latchround {

/// The path of a file that is there; empty where the person cancelled.
QString askForFile(QWidget* parent, const QString& title, const QString& folder,
                   const QString& filter);

/// A path to write to, `proposed` first; a file that is there already may be replaced: the dialog
/// has asked.
QString askWhereToSave(QWidget* parent, const QString& title, const QString& proposed,
                       const QString& filter);

} // namespace latchround
