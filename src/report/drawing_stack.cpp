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
std::string frames(Page& page, const Box& box, double top, double height) {
    const int n = std::clamp(frames_of(page.in.journal, box), 1, 20);
    return rect(box_left, top + 4, box_right - box_left, height - 6,
                fmt::format("fill=\"url(#{})\"", page.frame_pattern(n, box.comb == Comb::foundation))) +
           path(fmt::format("M{} {}H{}", xy(box_left + 3), xy(top + 3), xy(box_right - 3)), "hair");
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

std::string box_drawing(Page& page, const Box& box, double top, double height) {
    std::string out = frames(page, box, top, height);
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
            return rect(box_left, top, width, height, "class=\"line\"") +
                   rect(box_left + 30, top + 5, width - 60, height - 5, "class=\"line\"");
        case StackPart::What::upper_entrance:
            return rect(box_left, top + 1, width, height - 2, "class=\"line\"") +
                   rect(box_left + 40, top + 2, 24, 3, "fill=\"currentColor\"");
        case StackPart::What::box: break;
    }
    return {};
}

std::string days_on(const Page& page, const Standing& standing) {
    if (!standing.since) return {};
    const int days = days_between(*standing.since, page.in.history.on);
    return days == 0 ? std::string("today") : counted(days, "day");
}

const Box* box_of(const Page& page, const Standing& standing) {
    return standing.box == no_box ? nullptr : &page.in.history.boxes[static_cast<std::size_t>(standing.box)];
}

/// `super 2`, counted from the brood up as the notation counts; `brood box 1` is the one on the floor.
std::string numbered(const Page& page, const HiveHistory& hive, std::size_t at) {
    const Box* box = box_of(page, hive.stack[at]);
    if (!box) return standing_text(page.in.journal, page.in.history, hive.stack[at]);
    std::size_t number = 0;
    for (std::size_t i = 0; i <= at; ++i)
        if (const Box* below = box_of(page, hive.stack[i])) number += below->role == box->role;
    return fmt::format("{} {}", box->role == Role::brood ? "brood box" : "super", number);
}

/// What a part is, with its number: `super 2, medium, 9 frames, drawn`.
std::string part_text(const Page& page, const HiveHistory& hive, std::size_t at) {
    const std::string name = numbered(page, hive, at), whole = standing_text(page.in.journal, page.in.history, hive.stack[at]);
    const std::string role = name.substr(0, name.find_last_of(' '));
    return whole.starts_with(role) && whole != name ? name + whole.substr(role.size()) : name;
}

std::string standing_html(Page& page, const HiveHistory& hive, std::size_t at) {
    const Standing& standing = hive.stack[at];
    std::string out = "<li>" + bdi(part_text(page, hive, at));
    if (const SuperEstimate* super = standing.box == no_box ? nullptr : page.in.estimates.super(standing.box)) {
        out += fmt::format(": {} full, {} capped, {}", share_text(super->full), share_text(super->capped),
                           kg_text(super->kg, page.in.style));
        out += page.refs(super->because);
    }
    out += standing.since ? fmt::format(" <span class=\"sub\">since {}, {}</span>", iso(*standing.since), days_on(page, standing))
                          : std::string(" <span class=\"sub\">from the start</span>");
    return out + page.ref(standing.fact, hive.hive) + "</li>\n";
}

/// What is written beside a part in the drawing: one line, three for a super. The ranges of its shares are drawn.
std::vector<std::string> label(const Page& page, const HiveHistory& hive, std::size_t at) {
    const Standing& standing = hive.stack[at];
    const std::string days = days_on(page, standing);
    const Box* box = box_of(page, standing);
    std::string what = numbered(page, hive, at);
    if (box && !box->label.empty()) what += fmt::format(" \"{}\"", shortened(box->label, 10));
    if (!days.empty()) what += ", " + days;
    const SuperEstimate* super = box && box->role == Role::super ? page.in.estimates.super(box->id) : nullptr;
    if (!super) return {what};
    const auto share = [](const Range& r) { return share_text({r.value, r.value, r.value}); };
    return {what, fmt::format("{} full, {} capped", share(super->full), share(super->capped)), kg_text(super->kg, page.in.style)};
}

/// The stack from its roof down, with a leader line from each part to what is written beside it.
class StackPicture {
public:
    explicit StackPicture(Page& page) : page_(page) { svg_ = shared("roof", 0); }

    void part(const HiveHistory& hive, std::size_t at) {
        const Standing& standing = hive.stack[at];
        const Box* box = box_of(page_, standing);
        const double height = box ? depth_px(page_.in.journal, *box) : gear_px(standing.what);
        svg_ += box ? box_drawing(page_, *box, y_, height) : gear_drawing(standing.what, y_, height);
        write(label(page_, hive, at), y_ + height / 2);
        y_ += height;
    }

    std::string figure(std::string_view name) {
        svg_ += shared("floor", y_);
        return fmt::format("<svg class=\"chart\" viewBox=\"0 0 340 {}\" role=\"img\" aria-label=\"the stack of {}, told below\">"
                           "<path class=\"hair\" d=\"{}\"/>{}</svg>\n", xy(std::max(y_ + 30, written_ + 4)), html(name), leaders_, svg_);
    }

private:
    /// Beside the middle of the part, or below what is written already.
    void write(const std::vector<std::string>& lines, double middle) {
        constexpr double line_px = 12.5, text_x = 160;
        const double tall = line_px * static_cast<double>(lines.size());
        const double top = std::max(middle - tall / 2, written_);
        leaders_ += fmt::format("M{} {}L{} {}", xy(box_right + 1), xy(middle), xy(text_x - 4), xy(top + line_px / 2));
        for (std::size_t i = 0; i < lines.size(); ++i)
            svg_ += fmt::format("<text x=\"{}\" y=\"{}\">{}</text>", xy(text_x),
                                xy(top + line_px * static_cast<double>(i + 1) - 3), html(lines[i]));
        written_ = top + tall + 4;
    }

    Page& page_;
    std::string svg_, leaders_;
    double y_ = 14, written_ = 2;
};

}  // namespace

std::string stack_drawing(Page& page, const HiveHistory& hive) {
    if (hive.stack.empty()) return "<p>What stands on its floor was never said.</p>\n";
    StackPicture picture(page);
    std::string told;
    for (std::size_t i = hive.stack.size(); i-- > 0;) {
        picture.part(hive, i);
        told += standing_html(page, hive, i);
    }
    const std::string drawn = picture.figure(page.in.journal.hive_name(hive.hive));
    return fmt::format("<figure class=\"stack\">{}<ol>\n{}</ol></figure>\n", drawn, told);
}

std::string frame_patterns(const Page& page) {
    std::string out;
    for (const auto& [frames, foundation] : page.frame_patterns())
        out += fmt::format("<pattern id=\"{}\" x=\"{}\" width=\"{:.3f}\" height=\"60\" patternUnits=\"userSpaceOnUse\">"
                           "<path class=\"hair\" d=\"M0 0V60\" style=\"stroke-width:1.2{}\"/></pattern>\n",
                           Page::frame_pattern_name(frames, foundation), xy(box_left), (box_right - box_left) / frames,
                           foundation ? ";stroke-dasharray:1 2" : "");
    return out;
}

}  // namespace waxtab
