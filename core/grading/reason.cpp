#include "core/grading/reason.h"

#include <array>
#include <cstdio>

namespace latchround {

namespace {

std::string runsText(int runs) {
    return runs == 1 ? "1 run" : std::to_string(runs) + " runs";
}

std::string heelText(double degrees) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f", degrees);
    return text.data();
}

std::string orElse(const std::string& text, const char* otherwise) {
    return text.empty() ? otherwise : text;
}

} // namespace

std::string inWords(const Reason& reason) {
    switch (reason.kind) {
    case ReasonKind::NotAsked:
        return "not asked of this door";
    case ReasonKind::OutsideThisWalk:
        return "not tried on this walk: " + reason.text;
    case ReasonKind::NotYetTested:
        return "not yet tried";
    case ReasonKind::OneSideMissing:
        return "one side still to be tried";
    case ReasonKind::CouldNotTest:
        return "could not be tested: " + orElse(reason.text, "no reason given");
    case ReasonKind::AnsweredYes:
        return "seen";
    case ReasonKind::AnsweredNo:
        return "seen, and it is not so";
    case ReasonKind::AnsweredNotApplicable:
        return "answered as not applicable to this door";
    case ReasonKind::ShownByRun:
        return "shown by a complete run";
    case ReasonKind::InsideLimits:
        return "inside the limits" + (reason.runs > 1 ? ", mean of " + runsText(reason.runs) : "");
    case ReasonKind::OutsideLimits:
        return "outside the limits" + (reason.runs > 1 ? ", mean of " + runsText(reason.runs) : "");
    case ReasonKind::TooCloseToLimit:
        return "a limit lies inside the uncertainty: measure once more";
    case ReasonKind::StillCloseAfterThree:
        return "still too close to a limit after " + runsText(reason.runs) +
               ": the text says approximate, you decide";
    case ReasonKind::RunsDisagree:
        return "closes unevenly: " + runsText(reason.runs) + " do not agree, the worst stands";
    case ReasonKind::UnevenHalves:
        return "one half of the travel lies outside the limits: roughly uniform?";
    case ReasonKind::ShipNotUpright:
        return "heel " + heelText(reason.heel_deg) +
               " degrees: the figure is advice only, time it again upright";
    case ReasonKind::ClassSuits:
        return reason.text;
    case ReasonKind::ClassTooLow:
        return "weaker than its boundary: " + reason.text;
    case ReasonKind::BoundaryClassUnknown:
        return reason.text + "; the register does not say what the boundary asks for: see the "
                             "approved fire plan or ask the Administration";
    case ReasonKind::NoValuePrinted:
        return reason.text + "; no value printed: ask the Administration";
    case ReasonKind::NoClassAsked:
        return reason.text + "; no fire class is asked here";
    case ReasonKind::PlateAgrees:
        return reason.text;
    case ReasonKind::PlateDiffers:
        return "they differ: " + reason.text;
    case ReasonKind::PlateMissing:
        return reason.text + ": ask for the certificate";
    case ReasonKind::PracticeNotMet:
        return "not as good practice has it: you decide whether the door may stay so";
    case ReasonKind::InspectorDecided:
        return "decided by the inspector: " + orElse(reason.text, "no reason given");
    case ReasonKind::NeedsRemoteRun:
        return "needs a run released from the control station";
    case ReasonKind::EventsInOrder:
        return "the alarm was still on when the door was shut";
    case ReasonKind::EventsOutOfOrder:
        return "the alarm stopped before the door was shut";
    case ReasonKind::OpeningUnknown:
        return "the register has no clear opening for this door";
    }
    return {};
}

} // namespace latchround
