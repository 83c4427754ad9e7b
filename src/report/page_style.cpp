#include <fmt/format.h>

#include "report/page_parts.hpp"

namespace waxtab {

namespace {

constexpr std::string_view style_sheet = R"(
:root{color-scheme:light dark;--paper:#f8f4e8;--ink:#211c14;--soft:#564d3f;--hair:#a79c86}
@media (prefers-color-scheme:dark){:root{--paper:#17140f;--ink:#ebe2cf;--soft:#bdb29c;--hair:#6b6252}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0 auto;padding:1rem 1rem 4rem;max-width:64rem;background:var(--paper);color:var(--ink);
font:1.0625rem/1.5 "Iowan Old Style","Palatino Linotype",Palatino,"Book Antiqua",Georgia,"DejaVu Serif",serif;overflow-wrap:anywhere}
a{color:inherit;text-decoration-thickness:1px;text-underline-offset:.2em}
a:focus-visible,summary:focus-visible,.wide:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
h1,h2,h3,h4{font-weight:normal;line-height:1.2;margin:1.6em 0 .5em}
h1{font-size:1.9rem;margin-top:.4rem}
h2{font-size:1.5rem;border-bottom:3px double var(--ink);padding-bottom:.2em;margin-top:2.4em}
h3{font-size:1.2rem;font-style:italic}
h4{font-size:1.0625rem;font-weight:bold;margin:1em 0 .2em}
p,ul,ol,dl{margin:.5em 0}
ul,ol{padding-left:1.3em}
li{margin:.3em 0}
nav ul{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.1em 1.1em}
nav a{display:inline-block;padding:.3em 0}
.ref{color:var(--soft);font-size:.85em}
.ref a{padding:.15em 0}
time{white-space:nowrap}
.sub{color:var(--soft);font-size:.92em}
.due{font-style:italic}
.care{border-left:3px double var(--ink);padding-left:.7em}
details{margin:.2em 0}summary{cursor:pointer;padding:.15em 0;color:var(--soft)}
li>details:not([open]){display:inline-block;margin:0 0 0 .3em;font-size:.85em}
article{margin:1.2em 0 2.4em;padding-top:.2em;border-top:1px solid var(--hair)}
.plate{display:grid;grid-template-columns:minmax(0,1fr);gap:.2em 2rem}
@media (min-width:46rem){.plate{grid-template-columns:minmax(0,23rem) minmax(0,1fr)}}
figure{margin:.5em 0}
figcaption{color:var(--soft);font-size:.9em}
.stack ol{list-style:none;padding:0;margin:.3em 0;font-size:.94em}
.chart{width:100%;max-width:31rem;height:auto;display:block}
.stack .chart,.key{max-width:25rem}
svg{color:var(--ink)}
text{fill:currentColor;font:12px Georgia,"DejaVu Serif",serif;paint-order:stroke;stroke:var(--paper);stroke-width:3px;stroke-linejoin:round}
.hair{stroke:var(--hair);stroke-width:.6;fill:none}
.line{stroke:currentColor;stroke-width:1;fill:none}
.bold{stroke:currentColor;stroke-width:1.7;fill:none}
.dash{stroke:currentColor;stroke-width:1;fill:none;stroke-dasharray:3 2.5}
.wide{overflow-x:auto;max-width:100%}
.wide table{min-width:44rem}
@media screen and (max-width:46rem){.wide td:last-child{min-width:11rem}}
table{border-collapse:collapse;margin:.6em 0;font-size:.94em;font-variant-numeric:tabular-nums}
caption{text-align:left;color:var(--soft);font-style:italic;padding:.3em 0}
th,td{text-align:left;vertical-align:top;padding:.25em .9em .25em 0;border-bottom:1px solid var(--hair);
overflow-wrap:normal;min-width:3.2em}
td bdi,th bdi{overflow-wrap:break-word;display:inline-block;max-width:min(14rem,44vw)}
td .ref{overflow-wrap:anywhere}
td svg{display:block}
th{font-weight:normal;font-style:italic}
thead th{border-bottom:1px solid var(--ink)}
.n{text-align:right;white-space:nowrap}
.lines div{display:flex;gap:.8em;padding:.1em 0}
.lines div:target{outline:2px solid var(--ink);outline-offset:2px}
.lines dt{flex:0 0 3em;text-align:right;color:var(--soft)}
.lines dd{margin:0;white-space:pre-wrap;unicode-bidi:plaintext;min-width:0;flex:1}
.facts{display:grid;grid-template-columns:minmax(6rem,max-content) minmax(0,1fr);gap:.1em 1em}
.facts dt{color:var(--soft)}.facts dd{margin:0}
.sheet .hive{border-top:1px solid var(--ink);padding:.5em 0 .8em}
.sheet .write{border-bottom:1px solid var(--hair);height:1.9em}
.sheet h3{margin-bottom:.2em}
.sheet ul{list-style:none;padding:0}
.sheet li{padding-left:1.7em;position:relative}
.sheet li::before{content:"";position:absolute;left:0;top:.28em;width:.95em;height:.95em;border:1px solid currentColor}
@media print{
:root{--paper:#fff;--ink:#000;--soft:#333;--hair:#888;color-scheme:light}
@page{margin:14mm}
body{font-size:10pt;line-height:1.4;max-width:none;padding:0}
nav,.ref a[href]{text-decoration:none}nav{display:none}
h2,h3,h4,article>.sub,section>.sub,h2+p,p:has(+figure){break-after:avoid}
figure,tr,li,.sub,.wide,.facts dd{break-inside:avoid}
p,li,dd{orphans:3;widows:3}
details:not(.also){display:none!important}
details::details-content{content-visibility:visible;display:block;height:auto}
.sheet{display:table;width:100%;break-before:page}
.sheet-head{display:table-header-group;break-inside:avoid}
.sheet-body{display:table-row-group}
.sheet-row{display:table-row;break-inside:avoid}
.sheet-row>div{display:table-cell}
.sheet .ref{display:none}.sheet a{text-decoration:none}
.sheet .write{height:8mm}
.after-sheets{break-before:page}
.sheets-head{display:none}
.plate{grid-template-columns:6.6cm minmax(0,1fr);gap:0 .7cm;align-items:start}
.plate>div:has(>.stack),.plate>div:has(>.stack)+div,.stack{display:contents}
.plate .stack .chart{grid-row:1/span 2}.plate>div>p{grid-column:2;margin:0}
.stack ol,.plate h4,.plate .facts{grid-column:1/-1}.stack ol{grid-row:3;font-size:.85em}.stack li{margin:.1em 0}
.plate figure:not(.stack){grid-column:2;grid-row:2;margin:0}.plate figure .chart{max-width:9.5cm}
article{break-inside:avoid;margin:0 0 .6em}article h4,article p,article ol{margin:.15em 0}
.facts{gap:0 .6em;font-size:.92em}
.chart{max-width:11cm}
.wide{overflow:visible}.wide table{min-width:0}
}
)";

constexpr std::string_view hatchings = R"svg(<svg width="0" height="0" style="position:absolute" aria-hidden="true" focusable="false"><defs>
<pattern id="honey" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
<path d="M0 0V4" stroke="currentColor" stroke-width=".9"/></pattern>
<pattern id="capped" width="3" height="3" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
<path d="M0 0V3" stroke="currentColor" stroke-width=".9"/></pattern>
<pattern id="shade" width="2.2" height="2.2" patternUnits="userSpaceOnUse">
<path d="M0 .5H2.2" stroke="currentColor" stroke-width=".5"/></pattern>
<pattern id="band" width="3" height="3" patternUnits="userSpaceOnUse" patternTransform="rotate(60)">
<path d="M0 0V3" stroke="currentColor" stroke-width=".45"/></pattern>
<pattern id="ahead" width="4" height="4" patternUnits="userSpaceOnUse"><circle cx="1" cy="1" r=".55" fill="currentColor"/></pattern>
<pattern id="stream" width="3.2" height="3.2" patternUnits="userSpaceOnUse">
<path d="M0 1H3.2" stroke="currentColor" stroke-width=".55"/></pattern>
<g id="excluder">
<path class="line" d="M14 1v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4
m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4m4 -4v4"/>
<path class="hair" d="M12 3h116"/></g>
<g id="floor"><rect class="bold" x="11" y="0" width="118" height="7"/>
<rect x="22" y="1.5" width="42" height="4" fill="currentColor"/>
<path class="line" d="M11 7l-9 6h14M22 7v14h8v-14M110 7v14h8v-14"/>
<path class="hair" d="M2 21h152M10 21l-4 6M17.6 21l-4 4M25.2 21l-4 4M32.8 21l-4 6M40.4 21l-4 4M48 21l-4 4M55.6 21l-4 6
M63.2 21l-4 4M70.8 21l-4 4M78.4 21l-4 6M86 21l-4 4M93.6 21l-4 4M101.2 21l-4 6M108.8 21l-4 4M116.4 21l-4 4M124 21l-4 6
M131.6 21l-4 4M139.2 21l-4 4M146.8 21l-4 6"/>
</g>
<g id="roof"><path class="bold" d="M9 6h122v8H9z"/><path class="line" d="M10 6l8 -5h104l8 5"/>
<rect x="9" y="9" width="122" height="5" fill="url(#shade)"/></g>
</defs></svg>
)svg";

}  // namespace

std::string page_document(std::string_view title, std::string_view body) {
    return fmt::format("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                       "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                       "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
                       "<title>{}</title>\n<style>{}</style>\n</head>\n<body>\n{}{}</body>\n</html>\n",
                       html(title), style_sheet, hatchings, unbroken(body));
}

}  // namespace waxtab
