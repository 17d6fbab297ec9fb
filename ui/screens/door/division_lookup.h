// What fire class a division needs, looked up: its kind, the two spaces it divides chosen from the
// ship's own list with examples, and the answer with its cell, notes and citation. A look-up, it
// records nothing.
#pragma once

#include <array>
#include <vector>

#include "core/division/required_class.h"
#include "ui/look/part.h"

class QBoxLayout;
class QListWidget;
class QPushButton;

namespace latchround::ui {

class Label;

class DivisionLookup : public Part {
    Q_OBJECT
public:
    /// Begins with what the register knows of the boundary.
    DivisionLookup(const FireTables& tables, const DivisionQuestion& question,
                   QWidget* parent = nullptr);

    const RequiredClass& answer() const { return m_answer; }
    QListWidget* spaces(int side) const { return m_spaces[static_cast<std::size_t>(side)]; }

private:
    QWidget* makeKinds();
    QWidget* makeLists();
    QWidget* makeAnswer();
    void choose(DivisionKind kind);
    void look();
    void say();

    FireTables m_tables;
    DivisionQuestion m_question;
    RequiredClass m_answer;
    std::vector<std::pair<DivisionKind, QPushButton*>> m_kinds;
    std::array<Label*, 2> m_titles{};
    std::array<QListWidget*, 2> m_spaces{};
    std::array<Label*, 2> m_examples{}; ///< all of the category chosen
    Label* m_class = nullptr;
    Label* m_source = nullptr;
    Label* m_notes = nullptr;
};

} // namespace latchround::ui
