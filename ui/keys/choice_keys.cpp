#include "ui/keys/choice_keys.h"

#include <algorithm>

#include <QPushButton>

#include "ui/keys/flow_grid.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

ChoiceKeys::ChoiceKeys(const char* name, Many many, int at_once, QWidget* parent)
    : Part(parent)
    , m_name(QString::fromLatin1(name))
    , m_many(many)
    , m_at_once(at_once)
    , m_more(new QPushButton(tr("More ›"), this))
    , m_grid(new FlowGrid(this)) {
    m_more->setObjectName(m_name + QStringLiteral("-more"));
    setRole(*m_more, "plain");
    connect(m_more, &QPushButton::clicked, this, [this] {
        m_first += m_at_once;
        if (m_first >= count())
            m_first = 0;
        arrange();
    });
    lookChanged();
}

void ChoiceKeys::setChoices(const QStringList& words) {
    for (QPushButton* key : m_keys)
        delete key;
    m_keys.clear();
    m_chosen.clear();
    for (int i = 0; i < words.size(); ++i) {
        auto* key = new QPushButton(this);
        key->setObjectName(QStringLiteral("%1-%2").arg(m_name).arg(i));
        key->setCheckable(true);
        setRole(*key, "choice");
        connect(key, &QPushButton::clicked, this, [this, i] { press(i); });
        m_keys.push_back(key);
        setWords(i, words[i]);
    }
    m_first = 0;
    arrange();
}

void ChoiceKeys::setWords(int index, const QString& words) {
    QString shown = words;
    shown.replace(QLatin1Char('&'), QStringLiteral("&&")); // a name's own, not a shortcut
    key(index)->setText(shown);
    QString spoken = words;
    spoken.replace(QLatin1Char('\n'), QStringLiteral(", "));
    if (!accessibleName().isEmpty()) // where two groups offer the same
        spoken = accessibleName() + QStringLiteral(": ") + spoken;
    key(index)->setAccessibleName(spoken);
}

void ChoiceKeys::setUsable(int index, bool usable) {
    if (key(index)->isEnabled() == usable)
        return;
    key(index)->setEnabled(usable);
    arrange();
}

void ChoiceKeys::setAtOnce(int at_once) {
    if (m_at_once == at_once)
        return;
    m_at_once = at_once;
    m_first = 0;
    arrange();
}

void ChoiceKeys::setChosen(std::set<int> chosen) {
    m_chosen = std::move(chosen);
    show();
    if (m_many != Many::One || m_chosen.empty() || m_keys.empty())
        return;
    // The one that is chosen is in sight.
    m_first = std::min(*m_chosen.begin(), count() - 1) / m_at_once * m_at_once;
    arrange();
}

void ChoiceKeys::press(int index) {
    const bool was = m_chosen.contains(index);
    if (m_many == Many::One)
        m_chosen = {index};
    else if (was)
        m_chosen.erase(index);
    else
        m_chosen.insert(index);
    show();
    emit touched(index, m_chosen.contains(index));
}

void ChoiceKeys::show() {
    for (int i = 0; i < count(); ++i)
        key(i)->setChecked(m_chosen.contains(i));
}

void ChoiceKeys::arrange() {
    // On a narrow page two narrow columns rather than one wide one.
    const int columns = FlowGrid::columnsOf(width(), mm(width() < mm(80) ? 30 : 38), 4);
    const bool all = count() <= m_at_once + 1;
    const int first = all ? 0 : m_first;
    const int past = all ? count() : std::min(m_first + m_at_once, count());
    FlowGrid::Keys shown;
    for (int i = 0; i < count(); ++i) {
        const bool here = i >= first && i < past && key(i)->isEnabled();
        key(i)->setVisible(here);
        if (here)
            shown.push_back(key(i));
    }
    m_more->setVisible(!all);
    if (!all)
        shown.push_back(m_more);
    m_grid->place(shown, columns, FlowGrid::keyHeight(m_keys, columns, width()));
    updateGeometry();
}

void ChoiceKeys::lookChanged() {
    arrange();
    Part::lookChanged();
}

void ChoiceKeys::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

} // namespace latchround::ui

#include "moc_choice_keys.cpp"
