#include "ui/keys/second_tap.h"

#include <QAbstractButton>
#include <QEvent>

namespace latchround::ui {

namespace {

class SecondTap : public QObject {
public:
    using QObject::QObject;

    bool eventFilter(QObject*, QEvent* event) override {
        return event->type() == QEvent::MouseButtonDblClick;
    }
};

} // namespace

void passOverSecondTap(QAbstractButton& key) {
    key.installEventFilter(new SecondTap(&key));
}

} // namespace latchround::ui
