// Second page of a plan: the brief, read out part by part, and what is agreed with the control
// station. Only then can the walkdown begin. Where there is room for one of the two at a time the
// brief comes first.
#pragma once

#include "ui/look/part.h"
#include "ui/screens/plan/plan_draft.h"

class QBoxLayout;
class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class BriefRow;
class Label;
class PlanSheets;
class RowPager;
class StageKeys;
class ValueRow;

class BriefPage : public Part {
    Q_OBJECT
public:
    BriefPage(VesselSession& session, PlanDraft& draft, QWidget* parent = nullptr);

    void refresh();
    void arrange(bool upright, bool small);
    /// The brief, where the two come one at a time.
    void begin();
    /// The walkdown was begun and is not on disk: why. Empty: it is not waiting.
    void setWaiting(const QString& why);
    /// First key of the page, for the keyboard to start from.
    QPushButton* firstKey() const;

signals:
    void planAsked();
    void beginAsked();

protected:
    void lookChanged() override;

private:
    QWidget* makeBrief();
    QWidget* makeAgreed();
    QString whatIsMissing() const;
    void showState();
    void sizeKeys();

    const VesselSession& m_session;
    PlanDraft& m_draft;
    PlanSheets* m_sheets;
    QString m_waiting;
    QVBoxLayout* m_lines;
    QBoxLayout* m_sides;
    StageKeys* m_stages;
    bool m_roomy = true; ///< for keys as high as a main target
    Label* m_brief_title = nullptr;
    Label* m_agreed_title = nullptr;
    std::vector<QVBoxLayout*> m_columns;
    QHBoxLayout* m_keys = nullptr;
    RowPager* m_brief = nullptr;
    std::vector<BriefRow*> m_brief_rows;
    RowPager* m_agreed = nullptr;
    std::vector<ValueRow*> m_agreed_rows;
    Label* m_state = nullptr;
    QPushButton* m_back = nullptr;
    QPushButton* m_begin = nullptr;
};

} // namespace latchround::ui
