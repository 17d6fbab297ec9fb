#include "tests/tour/tour.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QPointer>
#include <QPushButton>
#include <QRegularExpression>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/practice_app.h"
#include "app/register/sqlite_register.h"
#include "app/vessels/sample_vessel.h"
#include "app/vessels/vessel_folder.h"
#include "tests/passing_time.h"
#include "tests/whole/hands.h"
#include "ui/frames/sheet_pages.h"
#include "ui/keys/help_key.h"
#include "ui/keys/phrase_picker.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/value_row.h"

namespace latchround::tour {

namespace {

/// The demo's last walkdown was begun that morning: 26 November 2026, 10:42, UTC+1.
constexpr Moment ships_time{1'795'686'120'000, 60};
constexpr std::int64_t first_steady_ns = 5'000'000'000'000;
constexpr std::uint32_t lot = 7;

/// Can be touched where it is now.
bool isInSight(const QWidget& widget) {
    return widget.isVisible() &&
           widget.visibleRegion().boundingRect().contains(widget.rect().center());
}

} // namespace

Tour::Tour(const Tablet& tablet, Seen seen)
    : m_tablet(tablet)
    , m_seen(std::move(seen))
    , m_steady_ns(first_steady_ns)
    , m_dice(lot)
    , m_app(builtInCatalogue().value(), {}, m_look) {
    qputenv("LATCHROUND_DATA", m_data.path().toUtf8());
    m_app.clock().setWall([] { return ships_time; });
    m_app.clock().setSteady([this] { return m_steady_ns; });
    m_app.setLot([] { return lot; });
    m_app.clock().setIds([this] {
        std::array<std::uint8_t, 10> random{};
        for (std::uint8_t& byte : random)
            byte = std::uint8_t(m_dice() & 0xff);
        return m_ids.next(ships_time.utc_ms, random);
    });
    m_look.setScale(tablet.scale);
    m_look.setGloves(tablet.gloves);
    m_look.applyTo(*qApp);
    openVessel();
    dress(window());
}

Tour::~Tour() = default;

QString placeTourVessel() {
    const QString placed = placeSampleVessel(sampleVessels().front(), ships_time).value();
    // The tablet's own key is the same each time.
    const auto file = SqliteRegister::open(placed).value();
    SqliteRegister::KeySeed seed{};
    seed.fill(std::byte(lot));
    EXPECT_TRUE(file->keySeed([&seed] { return seed; }));
    return placed;
}

void Tour::openVessel() {
    const QString ready = qEnvironmentVariable(ready_vessel);
    if (ready.isEmpty()) {
        ASSERT_TRUE(m_app.open(placeTourVessel()));
        return;
    }
    const QString own = QDir(vesselFolder()).filePath(QFileInfo(ready).fileName());
    ASSERT_TRUE(QFile::copy(ready, own));
    ASSERT_TRUE(m_app.open(own));
}

QWidget& Tour::window() const {
    return m_app.practiceApp() ? *m_app.practiceApp()->window() : *m_app.window();
}

void Tour::dress(QWidget& window) {
    m_dressed = &window;
    window.resize(m_tablet.size);
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
    settle();
}

void Tour::settle() {
    test::settle([this] { return &window(); });
}

void Tour::waitUntil(const std::function<bool()>& condition, const char* what) {
    hands::until(condition, what);
    settle();
}

void Tour::waitForKey(const QString& name) {
    const auto ready = [&] {
        const auto* key = window().findChild<QAbstractButton*>(name);
        return key && key->isVisible() && key->isEnabled();
    };
    if (!ready())
        test::letTimePass(window());
    waitUntil(ready, name.toUtf8().constData());
}

void Tour::stop(const QString& name) {
    if (&window() != m_dressed)
        dress(window());
    settle();
    EXPECT_EQ(window().size(), m_tablet.size) << name.toStdString();
    m_seen(name, *this);
}

bool Tour::shows(const QString& name) const {
    for (const QWidget* widget : window().findChildren<QWidget*>(name))
        if (widget->isVisible())
            return true;
    return false;
}

QWidget* Tour::inSight(const QString& name) {
    for (QWidget* widget : window().findChildren<QWidget*>(name))
        if (turnPagesTo(*widget))
            return widget;
    return nullptr;
}

QWidget* Tour::reach(const QString& name) {
    constexpr int keys_to_press = 2;
    return reachBy(name, keys_to_press);
}

/// Where there is room for one part at a time, keys open the others, or lead from one to the next.
QWidget* Tour::reachBy(const QString& name, int presses) {
    if (QWidget* widget = inSight(name); widget || presses == 0)
        return widget;
    static const QRegularExpression on(QStringLiteral("^((plan|brief)-on|first-after)$"));
    static const QRegularExpression back(QStringLiteral("^(plan|brief|first)-before$"));
    for (const QRegularExpression& way : {on, back})
        while (QAbstractButton* key = keyInSight(way)) {
            hands::click(key);
            settle();
            if (QWidget* widget = inSight(name))
                return widget;
        }
    static const QRegularExpression openers(
        QStringLiteral("^(([a-z]+-)?part-|caution-(next|doors)$|slips$)"));
    std::vector<QPointer<QAbstractButton>> keys;
    for (QAbstractButton* key : window().findChildren<QAbstractButton*>(openers))
        if (isInSight(*key))
            keys.emplace_back(key);
    static const QRegularExpression to_list(QStringLiteral("^part-list$"));
    for (const QPointer<QAbstractButton>& key : keys) {
        if (key && !isInSight(*key))
            if (QAbstractButton* list = keyInSight(to_list)) {
                hands::click(list);
                settle();
            }
        if (!key || !isInSight(*key) || !key->isEnabled())
            continue;
        hands::click(key);
        settle();
        if (QWidget* widget = reachBy(name, presses - 1))
            return widget;
        if (key && isInSight(*key) && key->isCheckable() && key->isChecked()) {
            hands::click(key); // shut again
            settle();
        }
    }
    return nullptr;
}

QAbstractButton* Tour::keyInSight(const QRegularExpression& name) const {
    for (QAbstractButton* key : window().findChildren<QAbstractButton*>(name))
        if (isInSight(*key) && key->isEnabled())
            return key;
    return nullptr;
}

bool Tour::turnPagesTo(QWidget& widget) {
    if (isInSight(widget))
        return true;
    const auto turn = [&](auto* pages) {
        for (int page = 0; page < pages->pages(); ++page) {
            pages->turnTo(page);
            settle();
            if (isInSight(widget))
                return true;
        }
        return false;
    };
    for (QWidget* at = &widget; at; at = at->parentWidget()) {
        if (auto* pager = qobject_cast<ui::RowPager*>(at); pager && pager->isVisible())
            if (turn(pager))
                return true;
        if (auto* pages = qobject_cast<ui::SheetPages*>(at); pages && pages->isVisible())
            if (turn(pages))
                return true;
    }
    return false;
}

void Tour::tap(const QString& name) {
    if (&window() != m_dressed)
        dress(window());
    QWidget* widget = reach(name);
    if (!widget) {
        ADD_FAILURE() << "nothing that can be reached is called " << name.toStdString();
        return;
    }
    if (auto* row = qobject_cast<ui::ValueRow*>(widget))
        widget = row->key();
    else if (!qobject_cast<QAbstractButton*>(widget))
        widget = widget->findChild<QPushButton*>();
    hands::click(widget);
    settle();
}

void Tour::askHelp(const QString& row) {
    QWidget* widget = reach(row);
    auto* key = widget ? widget->findChild<ui::HelpKey*>() : nullptr;
    ASSERT_NE(key, nullptr) << row.toStdString();
    hands::click(key);
    settle();
}

void Tour::tapPhrase(int number) {
    QWidget* sheet = hands::sheet(&window());
    auto* picker = sheet ? sheet->findChild<ui::PhrasePicker*>() : nullptr;
    ASSERT_NE(picker, nullptr);
    std::vector<QPushButton*> keys;
    for (QPushButton* key : picker->findChildren<QPushButton*>())
        if (key->isCheckable())
            keys.push_back(key);
    const std::size_t at = number < 0 ? keys.size() - std::size_t(-number) : std::size_t(number);
    ASSERT_LT(at, keys.size()) << "there is no such phrase: " << number;
    turnPagesTo(*keys[at]);
    hands::click(keys[at]);
    settle();
}

void Tour::type(const QString& field, const QString& words) {
    QTest::keyClicks(hands::find(&window(), field), words);
    settle();
}

void Tour::closeSheet() {
    tap(QStringLiteral("sheet-close"));
    waitUntil([this] { return window().findChild<QWidget*>(QStringLiteral("sheet")) == nullptr; },
              "the sheet is closed");
}

void Tour::closeTopSheet() {
    hands::click(hands::find(hands::sheet(&window()), QStringLiteral("sheet-close")));
    settle();
}

void Tour::mark(int after_ms) {
    constexpr int first_ms = 1'000'000;
    constexpr std::int64_t ns_per_ms = 1'000'000;
    if (after_ms == 0)
        m_run_ns = m_steady_ns;
    m_steady_ns = std::max(m_steady_ns, m_run_ns + after_ms * ns_per_ms);
    hands::pressAt(&window(), QStringLiteral("mark"), quint64(first_ms + after_ms));
    test::letTimePass(window());
    settle();
}

void Tour::pass(double seconds) {
    m_steady_ns += std::int64_t(seconds * 1e9);
    test::letTimePass(window());
    settle();
}

const std::vector<Part>& parts() {
    static const std::vector<Part> all = {{"walk", walkDoors},    {"sheets", openSheets},
                                          {"door", askAtDoor},    {"help", askForHelp},
                                          {"plan", planWalkdown}, {"review", reviewItems},
                                          {"practice", practise}, {"settings", settings},
                                          {"rules", readRules},   {"rare", goRareWays}};
    return all;
}

} // namespace latchround::tour
