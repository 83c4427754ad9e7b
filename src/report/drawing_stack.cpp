#include <algorithm>

#include <fmt/format.h>

#include "report/page_parts.hpp"
#include "report/phrases.hpp"
#include "report/timeline.hpp"

namespace waxtab {

namespace {

constexpr double px_per_mm = 0.24, box_left = 14, box_right = 126;
/// Drawn where no depth is known: a deep and a shallow, roughly.
constexpr double usual_brood_mm = 240, usual_super_mm = 150;

double depth_px(const Journal& journal, const Box& box) {
    const BoxKind* kind = journal.box_kind(box.kind);
    const double known = kind ? kind->depth_mm : 0;
    return px_per_mm * (known > 0 ? known : box.role == Role::brood ? usual_brood_mm : usual_super_mm);
}

std::string rect(double x, double y, double width, double height, std::string_view rest) {
    return fmt::format("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" {}/>", xy(x), xy(y), xy(width), xy(height), rest);
}
std::string path(std::string_view d, std::string_view css) { return fmt::format("<path d=\"{}\" class=\"{}\"/>", d, css); }

/// Frames as they hang, by their number; dotted while there is only foundation.
std::string frames(const Journal& journal, const Box& box, double top, double height) {
    const int n = std::clamp(frames_of(journal, box), 1, 20);
    std::string d;
    for (int i = 1; i < n; ++i)
        d += fmt::format("M{} {}v{}", xy(box_left + (box_right - box_left) * i / n), xy(top + 4), xy(height - 6));
    d += fmt::format("M{} {}H{}", xy(box_left + 3), xy(top + 3), xy(box_right - 3));
    return fmt::format("<path d=\"{}\" class=\"hair\"{}/>", d, box.comb == Comb::foundation ? " stroke-dasharray=\"1 2\"" : "");
}

/// Honey up to its level, capping over it, and the ranges of both as brackets at the sides.
std::string honey(const SuperEstimate& super, double top, double height) {
    const double bottom = top + height - 2, inner = height - 6, left = box_left + 2, width = box_right - box_left - 4;
    const auto y = [&](double share) { return bottom - inner * std::clamp(share, 0.0, 1.0); };
    std::string out = rect(left, y(super.full.value), width, bottom - y(super.full.value), "fill=\"url(#honey)\"");
    const double capped = std::min(super.capped.value, super.full.value);
    out += rect(left, y(capped), width, bottom - y(capped), "fill=\"url(#capped)\"");
    out += path(fmt::format("M{} {}h{}", xy(left), xy(y(super.full.value)), xy(width)), "line");
    const auto bracket = [&](const Range& r, double x) {
        return path(fmt::format("M{} {}h5m-2.5 0V{}m-2.5 0h5", xy(x), xy(y(r.high)), xy(y(r.low))), "line");
    };
    return out + bracket(super.full, box_right + 7) + bracket(super.capped, box_left - 10);
}

std::string box_drawing(const Page& page, const Box& box, double top, double height) {
    std::string out = frames(page.in.journal, box, top, height);
    const SuperEstimate* super = box.role == Role::super ? page.in.estimates.super(box.id) : nullptr;
    if (super) out += honey(*super, top, height);
    out += rect(box_right - 5, top, 5, height, "fill=\"url(#shade)\"");
    return out + rect(box_left, top, box_right - box_left, height, "class=\"bold\"");
}

/// A piece that looks the same at every hive, drawn once on the page.
std::string shared(std::string_view id, double top) { return fmt::format("<use href=\"#{}\" y=\"{}\"/>", id, xy(top)); }

double gear_px(StackPart::What what) {
    switch (what) {
        case StackPart::What::excluder: return 6;
        case StackPart::What::escape: return 7;
        case StackPart::What::feeder: return 20;
        case StackPart::What::upper_entrance: return 7;
        case StackPart::What::box: break;
    }
    return 0;
}

std::string gear_drawing(StackPart::What what, double top, double height) {
    const double width = box_right - box_left, middle = top + height / 2;
    switch (what) {
        case StackPart::What::excluder: return shared("excluder", middle - 3);
        case StackPart::What::escape:
            return rect(box_left, top + 1, width, height - 2, "class=\"line\"") +
                   path(fmt::format("M{} {}l8 5l8 -5", xy(box_left + width / 2 - 8), xy(top + 1)), "line");
        case StackPart::What::feeder:
            return rect(box_left, top, width, height, "class=\"line\"") + rect(box_left + 30, top + 5, width - 60, height - 5, "class=\"line\"");
        case StackPart::What::upper_entrance:
            return rect(box_left, top + 1, width, height - 2, "class=\"line\"") + rect(box_left + 40, top + 2, 24, 3, "fill=\"currentColor\"");
        case StackPart::What::box: break;
    }
    return {};
}

std::string standing_html(Page& page, const HiveHistory& hive, const Standing& standing, std::size_t number) {
    std::string out = fmt::format("<li>{}. {}", number, bdi(standing_text(page.in.journal, page.in.history, standing)));
    if (const SuperEstimate* super = standing.box == no_box ? nullptr : page.in.estimates.super(standing.box)) {
        out += fmt::format(": {} full, {} capped, {}", share_text(super->full), share_text(super->capped), kg_text(super->kg, page.in.style));
        out += page.refs(super->because);
    }
    out += standing.since ? fmt::format(" <span class=\"sub\">since {}, {}</span>", iso(*standing.since),
                                        counted(days_between(*standing.since, page.in.history.on), "day"))
                          : std::string(" <span class=\"sub\">from the start</span>");
    return out + page.ref(standing.fact, hive.hive) + "</li>\n";
}

}  // namespace

std::string stack_drawing(Page& page, const HiveHistory& hive) {
    if (hive.stack.empty()) return "<p>What stands on its floor was never said.</p>\n";
    std::string svg, legend;
    double y = 14;
    svg += shared("roof", 0);
    for (std::size_t i = hive.stack.size(); i-- > 0;) {
        const Standing& standing = hive.stack[i];
        const bool is_box = standing.box != no_box;
        const Box* box = is_box ? &page.in.history.boxes[static_cast<std::size_t>(standing.box)] : nullptr;
        const double height = box ? depth_px(page.in.journal, *box) : gear_px(standing.what);
        svg += box ? box_drawing(page, *box, y, height) : gear_drawing(standing.what, y, height);
        const std::size_t number = hive.stack.size() - i;
        svg += fmt::format("<text x=\"144\" y=\"{}\">{}</text>", xy(y + height / 2 + 3.5), number);
        legend += standing_html(page, hive, standing, number);
        y += height;
    }
    svg += shared("floor", y);
    const std::string name = html(page.in.journal.hive_name(hive.hive));
    return fmt::format("<figure class=\"stack\"><svg viewBox=\"0 0 160 {}\" role=\"img\" aria-label=\"the stack of {}, told beside it\">{}</svg>\n<ol>\n{}</ol></figure>\n",
                       xy(y + 30), name, svg, legend);
}

}  // namespace waxtab
