// The user guide as something that can be done: its numbered steps are read for what they tell the
// reader to do, so that a test can do it.
//
//   Touch **Key**                      a key by its words
//   Touch **Key** beside *words*       the one in the row with these words
//   Touch **Key** and name the file `f`
//   Mark **Shut** after 12 s           the stopwatch's key, so long after the mark before
//   Choose *words*                     a row of a list
//   Type `words`                       into the field or the keypad that is there
//   Press `Escape`
//   You see *words*
//
// Anything else in a step is for the reader alone; but bold words that no verb takes up, and a step
// in which there is nothing to do, are faults.
#pragma once

#include <string>
#include <vector>

#include <QString>
#include <QStringList>

namespace latchround::guide {

enum class Verb { Touch, Mark, Choose, Type, Press, See };

struct Action {
    Verb verb = Verb::Touch;
    QString what;
    QString beside;
    QString file;
    double after_s = 1;
};

struct Step {
    int line = 0;
    QString text;
    std::vector<Action> actions; ///< in the order of the text
    QStringList loose;           ///< bold words that no verb took up
};

struct Guide {
    std::vector<Step> steps;
    int words = 0;
};

Guide guideFrom(const QString& path);

} // namespace latchround::guide
