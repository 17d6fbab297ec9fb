#include "app/headless/report_command.h"

#include <filesystem>

#include "app/exchange/durable_file.h"
#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "app/headless/paper_language.h"
#include "app/headless/rules_command.h"
#include "app/languages/translations.h"
#include "app/report/made_report.h"
#include "app/report/paper_form.h"
#include "core/error/command_errors.h"
#include "core/evidence/newest_walkdown.h"
#include "core/evidence/same_name.h"
#include "ui/words/spoken_language.h"

namespace latchround::headless {

namespace {

constexpr auto program = "Latchround " LATCHROUND_VERSION;
constexpr std::string_view blank_form = "blank-form";
constexpr std::string_view rule_book = "rule-book";

Result<Format> formatOf(const Print& print) {
    std::string ending = std::filesystem::path(print.to).extension().string();
    const std::string wanted = print.format     ? *print.format
                               : ending.empty() ? "pdf"
                                                : ending.substr(1);
    if (wanted == "pdf" || wanted == "PDF")
        return Format::Pdf;
    if (wanted == "csv" || wanted == "CSV")
        return Format::Csv;
    if (wanted == "json" || wanted == "JSON")
        return Format::Json;
    return tl::unexpected(
        Error{print.format ? "--format" : "--to", errors::unknown_report_form(wanted)});
}

Result<std::string> personOf(const Ledger& ledger, const std::optional<std::string>& name) {
    if (!name)
        return std::string();
    for (const Person& person : ledger.people())
        if (isSameName(person.name, *name))
            return person.id;
    return tl::unexpected(Error{"--by", errors::nobody_of_name(*name)});
}

Result<FactId> walkdownFor(const Print& print, const OpenedRegister& opened) {
    if (!print.walkdown && print.door)
        if (const auto newest = newestWalkdownOf(opened.ledger, *print.door))
            return newest->id;
    const auto chosen = chosenWalkdown(opened, print.walkdown, print.path);
    if (!chosen)
        return tl::unexpected(chosen.error());
    return chosen->id;
}

Answer written(const Print& print, const QByteArray& document, OrderedJson answer) {
    const std::span bytes(document.constData(), static_cast<std::size_t>(document.size()));
    if (const Result<> done = writeDurably(print.to, std::as_bytes(bytes),
                                           print.replace ? IfThere::Replace : IfThere::Refuse);
        !done)
        return refused(done.error());
    answer["language"] = ui::spokenLanguage().toStdString();
    answer["bytes"] = bytes.size();
    return inLines(answer);
}

/// Of a walkdown, or of all doors where none was named.
Answer printPaperForm(const Print& print, const OpenedRegister& opened, Format format,
                      const Catalogue& catalogue) {
    if (format != Format::Pdf)
        return refused({"--kind", errors::blank_form_not_pdf()});
    PaperForm form{opened.arrangement, catalogue, {}, Purpose::Annual, now(), program,
                   print.practice};
    if (print.walkdown) {
        const auto walkdown = chosenWalkdown(opened, print.walkdown, print.path);
        if (!walkdown)
            return refused(walkdown.error());
        form.doors = walkdown->plan.doors;
        form.purpose = walkdown->plan.purpose;
    }
    if (print.door)
        form.doors = {*print.door};
    const auto pdf = paperFormPdf(form);
    if (!pdf)
        return refused(pdf.error());
    return written(
        print, *pdf,
        {{"file", print.to},
         {"kind", blank_form},
         {"doors", form.doors.empty() ? opened.arrangement.doors.size() : form.doors.size()}});
}

Answer printKind(const Print& print, const OpenedRegister& opened, ReportKind kind, Format format,
                 const Catalogue& catalogue) {
    const auto walkdown = walkdownFor(print, opened);
    if (!walkdown)
        return refused(walkdown.error());
    const auto person = personOf(opened.ledger, print.by);
    if (!person)
        return refused(person.error());
    const WalkdownReport report{opened.arrangement,
                                opened.ledger,
                                *walkdown,
                                catalogue,
                                now(),
                                program,
                                [&](std::string_view sha256) {
                                    auto bytes = opened.file->photograph(sha256);
                                    return bytes ? std::move(*bytes) : std::vector<std::byte>{};
                                },
                                print.practice,
                                *person,
                                print.door.value_or("")};
    const auto made = madeReport(report, kind, format);
    if (!made)
        return refused(made.error());
    OrderedJson answer;
    answer["file"] = print.to;
    answer["kind"] = word(kind);
    answer["walkdown"] = made->fact.walkdown;
    answer["doors"] = opened.ledger.walkdown(*walkdown)->plan.doors.size();
    answer["facts_sha256"] = made->fact.facts_sha256;
    answer["document_sha256"] = made->fact.document_sha256;
    return written(print, made->document, std::move(answer));
}

Answer printRuleBook(const Print& print, Format format, const Catalogue& catalogue) {
    if (format != Format::Pdf)
        return refused({"--kind", errors::rule_book_not_pdf()});
    RulesAsked asked;
    asked.register_path = print.path;
    asked.door = print.door;
    asked.to = print.to;
    asked.language = print.language;
    asked.practice = print.practice;
    asked.replace = print.replace;
    return showRules(asked, catalogue);
}

} // namespace

Answer printReport(const Print& print, const Catalogue& catalogue) {
    const auto kind = reportKindFrom(print.kind);
    if (!kind && print.kind != blank_form && print.kind != rule_book)
        return refused({"--kind", errors::unknown_document(print.kind)});
    if (kind == ReportKind::DoorRecord && !print.door)
        return refused({"--door", errors::door_record_without_door()});
    const auto format = formatOf(print);
    if (!format)
        return refused(format.error());
    if (print.kind == rule_book)
        return printRuleBook(print, *format, catalogue);
    const auto language = paperLanguage(print.language, *format == Format::Pdf);
    if (!language)
        return refused(language.error());
    if (const Result<> own = refuseOverRegister(print.to, print.path); !own)
        return refused(own.error());
    const auto opened = openedRegister(print.path);
    if (!opened)
        return refused(opened.error());
    const InLanguage spoken(*language);
    return kind ? printKind(print, *opened, *kind, *format, catalogue)
                : printPaperForm(print, *opened, *format, catalogue);
}

} // namespace latchround::headless
