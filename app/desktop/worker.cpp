#include "app/desktop/worker.h"

#include <exception>
#include <memory>

#include <sys/resource.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QEvent>
#include <QEventLoop>
#include <QThread>

namespace latchround {

namespace {

/// The window stays while the job goes on: whoever closes it is heard where the job asks.
class StaysOpen : public QObject {
public:
    StaysOpen() { qApp->installEventFilter(this); }

    bool asking = false;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (asking || event->type() != QEvent::Close || !watched->isWidgetType())
            return false;
        event->ignore();
        return true;
    }
};

/// What the screen and its marks want comes first; Linux gives each thread a rank of its own. Not
/// as low as SCHED_IDLE: on a machine that is busy otherwise a job would then never end.
void standBack() {
    constexpr int rank = 10;
    (void)::setpriority(PRIO_PROCESS, static_cast<id_t>(::gettid()), rank);
}

} // namespace

void doOnWorker(const Progress& on_screen, const std::function<void(const Progress&)>& job) {
    StaysOpen here; // on this thread
    QEventLoop loop;
    std::exception_ptr bug;
    const Progress ask = [&](int done, int of) {
        bool answer = true;
        QMetaObject::invokeMethod(
            &here,
            [&] {
                here.asking = true;
                answer = !on_screen || on_screen(done, of);
                here.asking = false;
            },
            Qt::BlockingQueuedConnection);
        return answer;
    };
    // Qt's own kind of thread: laying out a document starts timers, which ask for one.
    const std::unique_ptr<QThread> worker(QThread::create([&] {
        standBack();
        try {
            job(ask);
        } catch (...) {
            bug = std::current_exception();
        }
        QMetaObject::invokeMethod(&loop, &QEventLoop::quit, Qt::QueuedConnection);
    }));
    worker->start();
    loop.exec(QEventLoop::ExcludeUserInputEvents);
    worker->wait();
    if (bug)
        std::rethrow_exception(bug);
}

} // namespace latchround
