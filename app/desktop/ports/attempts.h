// How the exercises went, kept in a file of the user's.
#pragma once

#include "app/practice/attempts.h"
#include "ui/ports/attempts.h"

namespace latchround {

class DesktopAttempts : public ui::Attempts {
public:
    Result<std::vector<practice::Attempt>> finished() const override {
        practice::AttemptsRead read = practice::attempts();
        if (read.attempts.empty() && !read.spoiled.empty())
            return tl::unexpected(read.spoiled.front());
        return std::move(read.attempts);
    }
    Result<> keep(const practice::Attempt& attempt) override {
        return practice::keepAttempt(attempt);
    }
};

} // namespace latchround
