#include "ui/words/voice_words.h"

#include <QCoreApplication>

namespace latchround::ui {

QString voiceWords(practice::Voice voice) {
    switch (voice) {
    case practice::Voice::None:
        break;
    case practice::Voice::Ready:
        return QCoreApplication::translate("VoiceWords", "Control station: standing by");
    case practice::Voice::Releasing:
        return QCoreApplication::translate("VoiceWords", "Control station: releasing now");
    case practice::Voice::Stopped:
        return QCoreApplication::translate("VoiceWords", "Run stopped");
    case practice::Voice::PanelShut:
        return QCoreApplication::translate("VoiceWords", "Control station: my panel shows it shut");
    case practice::Voice::PanelOpen:
        return QCoreApplication::translate("VoiceWords", "Control station: my panel shows it open");
    }
    return {};
}

QString workWords(Release release, RunKind kind) {
    if (kind == RunKind::Contact)
        return QCoreApplication::translate("VoiceWords", "Let it run\nonto the block");
    switch (release) {
    case Release::Remote:
        return QCoreApplication::translate("VoiceWords", "Give the\nstart word");
    case Release::LocalSideOne:
        return QCoreApplication::translate("VoiceWords", "Operate release,\nside one");
    case Release::LocalSideTwo:
        return QCoreApplication::translate("VoiceWords", "Operate release,\nside two");
    case Release::LetGo:
        break;
    }
    return QCoreApplication::translate("VoiceWords", "Let it go");
}

} // namespace latchround::ui
