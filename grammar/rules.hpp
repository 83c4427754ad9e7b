#pragma once
// The parts of the notation that have one form, as PEGTL rules: numbers, quantities, dates, words.
// Rules only: no actions, no messages. The text they see has been put in plain characters first
// (smart quotes, dashes, fraction signs and no-break spaces written the ASCII way).
#include <tao/pegtl.hpp>

namespace waxtab::grammar {

namespace p = tao::pegtl;

// clang-format off
struct digits      : p::plus<p::digit> {};
struct letter      : p::sor<p::alpha, p::utf8::range<0x80, 0x10FFFF>> {};
struct word_end    : p::not_at<p::sor<p::alnum, p::utf8::range<0x80, 0x10FFFF>>> {};
struct gap         : p::star<p::blank> {};

// Numbers: 12, 2.5, 17,8. A comma is a decimal sign only between digits, one or two of them after it,
// and never in a list such as 1,3,4.
struct point       : p::seq<p::one<'.'>, digits> {};
struct comma       : p::seq<p::one<','>, p::rep_min_max<1, 2, p::digit>, p::not_at<p::digit>, p::not_at<p::one<','>, p::digit>> {};
struct number      : p::seq<digits, p::opt<p::sor<point, comma>>> {};
struct low_number  : number {};
struct high_number : number {};

// Units, longest first.
template<typename... Words> struct unit_word : p::seq<p::sor<Words...>, word_end> {};
struct u_percent   : p::sor<p::one<'%'>, unit_word<TAO_PEGTL_ISTRING("percent"), TAO_PEGTL_ISTRING("per cent"), TAO_PEGTL_ISTRING("pct")>> {};
struct u_kilogram  : unit_word<TAO_PEGTL_ISTRING("kilograms"), TAO_PEGTL_ISTRING("kilogram"), TAO_PEGTL_ISTRING("kilos"), TAO_PEGTL_ISTRING("kilo"), TAO_PEGTL_ISTRING("kgs"), TAO_PEGTL_ISTRING("kg")> {};
struct u_gram      : unit_word<TAO_PEGTL_ISTRING("grams"), TAO_PEGTL_ISTRING("gram"), TAO_PEGTL_ISTRING("gr"), TAO_PEGTL_ISTRING("g")> {};
struct u_pound     : p::sor<unit_word<TAO_PEGTL_ISTRING("pounds"), TAO_PEGTL_ISTRING("pound"), TAO_PEGTL_ISTRING("lbs"), TAO_PEGTL_ISTRING("lb")>, p::seq<p::one<'#'>, word_end>> {};
struct u_ounce     : unit_word<TAO_PEGTL_ISTRING("ounces"), TAO_PEGTL_ISTRING("ounce"), TAO_PEGTL_ISTRING("oz")> {};
struct u_tonne     : unit_word<TAO_PEGTL_ISTRING("tonnes"), TAO_PEGTL_ISTRING("tonne")> {};
struct u_litre     : unit_word<TAO_PEGTL_ISTRING("litres"), TAO_PEGTL_ISTRING("liters"), TAO_PEGTL_ISTRING("litre"), TAO_PEGTL_ISTRING("liter"), TAO_PEGTL_ISTRING("ltr"), TAO_PEGTL_ISTRING("l")> {};
struct u_millilitre: unit_word<TAO_PEGTL_ISTRING("millilitres"), TAO_PEGTL_ISTRING("milliliters"), TAO_PEGTL_ISTRING("ml")> {};
struct u_us_gallon : unit_word<TAO_PEGTL_ISTRING("us gallons"), TAO_PEGTL_ISTRING("us gallon"), TAO_PEGTL_ISTRING("us gal")> {};
struct u_imp_gallon: unit_word<TAO_PEGTL_ISTRING("imp gallons"), TAO_PEGTL_ISTRING("imp gallon"), TAO_PEGTL_ISTRING("imp gal"), TAO_PEGTL_ISTRING("imperial gallons"), TAO_PEGTL_ISTRING("imperial gallon")> {};
struct u_gallon    : unit_word<TAO_PEGTL_ISTRING("gallons"), TAO_PEGTL_ISTRING("gallon"), TAO_PEGTL_ISTRING("gals"), TAO_PEGTL_ISTRING("gal")> {};
struct u_us_quart  : unit_word<TAO_PEGTL_ISTRING("us quarts"), TAO_PEGTL_ISTRING("us quart"), TAO_PEGTL_ISTRING("us qt")> {};
struct u_imp_quart : unit_word<TAO_PEGTL_ISTRING("imperial quarts"), TAO_PEGTL_ISTRING("imperial quart"), TAO_PEGTL_ISTRING("imp quarts"), TAO_PEGTL_ISTRING("imp quart"), TAO_PEGTL_ISTRING("imp qt")> {};
struct u_quart     : unit_word<TAO_PEGTL_ISTRING("quarts"), TAO_PEGTL_ISTRING("quart"), TAO_PEGTL_ISTRING("qts"), TAO_PEGTL_ISTRING("qt")> {};
struct u_us_pint   : unit_word<TAO_PEGTL_ISTRING("us pints"), TAO_PEGTL_ISTRING("us pint"), TAO_PEGTL_ISTRING("us pt")> {};
struct u_imp_pint  : unit_word<TAO_PEGTL_ISTRING("imperial pints"), TAO_PEGTL_ISTRING("imperial pint"), TAO_PEGTL_ISTRING("imp pints"), TAO_PEGTL_ISTRING("imp pint"), TAO_PEGTL_ISTRING("imp pt")> {};
struct u_pint      : unit_word<TAO_PEGTL_ISTRING("pints"), TAO_PEGTL_ISTRING("pint"), TAO_PEGTL_ISTRING("pts"), TAO_PEGTL_ISTRING("pt")> {};
struct degree      : p::sor<TAO_PEGTL_ISTRING("degrees"), TAO_PEGTL_ISTRING("degree"), TAO_PEGTL_ISTRING("degs"), TAO_PEGTL_ISTRING("deg")> {};
struct celsius     : p::sor<TAO_PEGTL_ISTRING("celsius"), p::one<'C', 'c'>> {};
struct fahrenheit  : p::sor<TAO_PEGTL_ISTRING("fahrenheit"), p::one<'F'>> {};
struct u_celsius   : p::seq<p::opt<degree>, gap, celsius, word_end> {};
struct u_fahrenheit: p::seq<p::opt<degree>, gap, fahrenheit, word_end> {};
struct u_degree    : p::seq<degree, word_end> {};
struct u_day       : unit_word<TAO_PEGTL_ISTRING("days"), TAO_PEGTL_ISTRING("day")> {};
struct u_week      : unit_word<TAO_PEGTL_ISTRING("weeks"), TAO_PEGTL_ISTRING("week"), TAO_PEGTL_ISTRING("wks"), TAO_PEGTL_ISTRING("wk")> {};
struct u_hour      : unit_word<TAO_PEGTL_ISTRING("hours"), TAO_PEGTL_ISTRING("hour"), TAO_PEGTL_ISTRING("hrs"), TAO_PEGTL_ISTRING("hr"), TAO_PEGTL_ISTRING("h")> {};
struct unit        : p::sor<u_percent, u_kilogram, u_gram, u_pound, u_ounce, u_tonne, u_millilitre, u_litre,
                            u_us_gallon, u_imp_gallon, u_gallon, u_us_quart, u_imp_quart, u_quart, u_us_pint, u_imp_pint, u_pint,
                            u_celsius, u_fahrenheit, u_degree, u_day, u_week, u_hour> {};

// 75-80%, 4-5, 90+%, 30+
struct range_sign  : p::sor<p::seq<gap, p::one<'-'>, gap>, p::seq<p::plus<p::blank>, TAO_PEGTL_ISTRING("or"), p::plus<p::blank>>> {};
struct number_range: p::seq<low_number, range_sign, high_number, p::not_at<p::one<'-', '/'>>> {};
struct at_least    : p::seq<p::one<'+'>, p::not_at<p::digit>> {};
struct quantity    : p::seq<p::sor<number_range, p::seq<number, p::opt<at_least>>>, p::opt<gap, unit>> {};

// 1/2, 7/10, 1 1/2, 1/2 lb
struct numerator   : digits {};
struct denominator : digits {};
struct whole       : p::seq<digits, p::plus<p::blank>, p::at<digits, p::one<'/'>, p::rep_min_max<1, 2, p::digit>, p::not_at<p::digit>>> {};   // not of hive 1 3/300
struct slash       : p::seq<p::opt<whole>, numerator, p::one<'/'>, denominator, p::opt<gap, unit>> {};
struct ratio       : p::seq<p::digit, p::one<':'>, p::digit, p::not_at<p::digit>> {};
struct hour_minute : p::seq<p::rep_min_max<1, 2, p::digit>, p::one<':'>, p::rep<2, p::digit>, p::not_at<p::digit>, p::opt<gap, p::istring<'a', 'm'>>, p::opt<gap, p::istring<'p', 'm'>>> {};
struct iso_date    : p::seq<p::rep<4, p::digit>, p::one<'-'>, p::rep<2, p::digit>, p::one<'-'>, p::rep<2, p::digit>, p::not_at<p::digit>> {};
struct ordinal     : p::seq<digits, p::sor<TAO_PEGTL_ISTRING("st"), TAO_PEGTL_ISTRING("nd"), TAO_PEGTL_ISTRING("rd"), TAO_PEGTL_ISTRING("th")>, word_end> {};
// Sizes that look like numbers: 14x12.
struct size_name   : p::seq<digits, p::one<'x', 'X'>, digits, word_end> {};

// "words"; a quote mark inside is written twice
struct quoted      : p::seq<p::one<'"'>, p::star<p::sor<p::string<'"', '"'>, p::not_one<'"'>>>, p::one<'"'>> {};
struct word        : p::seq<letter, p::star<p::sor<letter, p::digit, p::seq<p::one<'\''>, p::at<letter>>, p::seq<p::one<'_'>, p::at<p::sor<letter, p::digit>>>>>> {};
struct arrow       : p::string<'-', '>'> {};
struct symbol      : p::utf8::any {};

struct token       : p::sor<p::plus<p::blank>, quoted, iso_date, hour_minute, ratio, size_name, ordinal, slash, quantity, word, arrow, symbol, p::any> {};
struct line        : p::until<p::eof, token> {};
// clang-format on

}  // namespace waxtab::grammar
