{{%AUTOESCAPE context="HTML"}}
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
<title>Specifications issued: {{REQUESTS}} requests</title>
<style>
  :root { --accent: #0072b2; --rule: #666; --shade: #f2f2f2; }
  * { box-sizing: border-box; }
  body { margin: 0 auto; padding: 1.5rem 2rem 3rem; max-width: 100rem; background: #fff; color: #000;
    font: 1rem/1.4 "Liberation Sans", Arial, Helvetica, sans-serif; }
  h1 { font-size: 1.6rem; margin: 0 0 .2rem; }
  h2 { font-size: 1.15rem; margin: 2rem 0 .5rem; }
  a { color: var(--accent); }
  :focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
  .minor { color: #444; font-size: .85em; font-weight: normal; display: block; }
  .skip { position: absolute; left: -100rem; }
  .skip:focus { left: 1rem; top: 1rem; background: #fff; padding: .5rem; }
  .counts { display: flex; flex-wrap: wrap; gap: .6rem; margin: 1rem 0; padding: 0; list-style: none; }
  .counts li { border: 1px solid var(--rule); border-left-width: 8px; padding: .4rem .8rem; min-width: 9rem; }
  .counts b { display: block; font-size: 1.5rem; }
  li.feasible, .verdict.feasible { border-left-color: #009e73; }
  li.conditional, .verdict.conditional { border-left-color: #e69f00; }
  li.infeasible, .verdict.infeasible { border-left-color: #d55e00; border-left-style: double; }
  li.incomplete, .verdict.incomplete { border-left-color: #cc79a7; border-left-style: dotted; }
  .verdict { border-left: 8px solid var(--rule); padding-left: .5rem; display: inline-block; }
  form { display: flex; flex-wrap: wrap; gap: .8rem 1rem; align-items: end; padding: .8rem; background: var(--shade); }
  form label { display: flex; flex-direction: column; font-size: .85rem; gap: .2rem; }
  form label.tick { flex-direction: row; align-items: center; gap: .5rem; min-height: 2.2rem; }
  input, select, button { font: inherit; color: inherit; }
  form input:not([type=checkbox]), form select, form button { min-height: 2.2rem; padding: .2rem .5rem; max-width: 100%;
    border: 1px solid var(--rule); background: #fff; }
  form input[type=number] { width: 8rem; }
  #more { min-height: 2.2rem; padding: .2rem .8rem; border: 1px solid var(--rule); background: #fff; }
  #shown { margin: .8rem 0; }
  table { border-collapse: collapse; width: 100%; }
  caption { text-align: left; color: #444; font-size: .85rem; padding-bottom: .3rem; }
  th, td { text-align: left; vertical-align: top; padding: .45rem .7rem .45rem 0; border-bottom: 1px solid #ccc;
    overflow-wrap: anywhere; }
  thead th { border-bottom: 2px solid #000; vertical-align: bottom; font-size: .9rem; }
  .list { table-layout: fixed; }
  .c1 { width: 15%; } .c2 { width: 23%; } .c3 { width: 14%; } .c4 { width: 11%; }
  .c5, .c6 { width: 11%; } .c7 { width: 6%; } .c8 { width: 9%; }
  .number { text-align: right; font-variant-numeric: tabular-nums; overflow-wrap: normal; }
  thead button { background: none; border: 0; padding: .2rem 0; font-weight: bold; cursor: pointer; text-align: inherit;
    text-decoration: underline dotted; text-underline-offset: .25em; }
  thead th[aria-sort=ascending] button::after { content: " \2191"; }
  thead th[aria-sort=descending] button::after { content: " \2193"; }
  .files { font-size: .85em; font-weight: normal; }
  tr[data-state=earlier] { background: var(--shade); }
  details ul { margin: .3rem 0 0; padding-left: 1.1rem; }
  summary { cursor: pointer; }
  [hidden] { display: none !important; }
  footer { margin-top: 2rem; color: #444; font-size: .85rem; }
  @media screen and (max-width: 60rem) {
    body { padding: 1rem; }
    .list, .list tbody, .list tr, .list th, .list td { display: block; width: 100%; }
    .list thead { display: block; }
    .list thead tr { display: flex; flex-wrap: wrap; gap: 0 1rem; }
    .list thead th { display: block; width: auto; border: 0; padding: 0; }
    .list tbody tr { border: 1px solid var(--rule); padding: .6rem .8rem; margin: .8rem 0; }
    .list caption { display: block; }
    .list tbody th, .list tbody td { border: 0; padding: .15rem 0; }
    .list tbody td { display: grid; grid-template-columns: 8rem 1fr; }
    .list tbody td::before { color: #444; font-size: .85rem; }
    .list tbody td:nth-child(2) { display: block; }
    .list td:nth-child(3)::before { content: "Answer"; }
    .list td:nth-child(4)::before { content: "Heads"; }
    .list td:nth-child(5)::before { content: "Capital"; }
    .list td:nth-child(6)::before { content: "Ownership"; }
    .list td:nth-child(7)::before { content: "Lead time, days"; }
    .list td:nth-child(8)::before { content: "Questions"; }
    .list td.number { text-align: left; }
    .list colgroup { display: none; }
    form label { flex: 1 1 8rem; min-width: 0; }
    form label.tick { flex-basis: 12rem; }
    form input[type=number] { width: 100%; }
    .counts li { flex: 1 1 40%; }
  }
  @media print {
    @page { size: A4 landscape; margin: 12mm; }
    html { font-size: 9pt; }
    body { padding: 0; max-width: none; }
    form, #more, .files, .skip { display: none; }
    thead button { text-decoration: none; }
    a { color: #000; text-decoration: none; }
    thead { display: table-header-group; }
    tr { break-inside: avoid; }
  }
  .scripted #list:not(.ready) tbody { display: none; }
</style>
<script>document.documentElement.className = "scripted";</script>
</head>
<body>
<a class="skip" href="#list">To the list</a>
<header>
<h1>Specifications issued</h1>
<p>{{OWNER}}. {{REQUESTS}} requests, {{ISSUES}} issues in this folder. Of each request the latest issue counts.</p>
<ul class="counts" aria-label="Requests by answer">
{{#VERDICT_COUNT}}
<li class="{{VERDICT}}"><b>{{COUNT}}</b>{{WORDS:none}}</li>
{{/VERDICT_COUNT}}
</ul>
</header>
<main>
<form id="filter" hidden aria-label="Filter the list">
<label>Search id, title, customer <input type="search" id="f-text"></label>
<label>Answer <select id="f-verdict"><option value="">all</option>{{#VERDICT_COUNT}}<option value="{{VERDICT}}">{{WORDS:none}}</option>{{/VERDICT_COUNT}}</select></label>
<label>Head <select id="f-head"><option value="">all</option>{{#HEAD_OPTION}}<option value="{{HEAD}}">{{HEAD}} ({{COUNT}})</option>{{/HEAD_OPTION}}</select></label>
<label>Capital at most <input type="number" id="f-capital" min="0" step="any"></label>
<label>Lead time at most, days <input type="number" id="f-lead" min="0" step="any"></label>
<label class="tick"><input type="checkbox" id="f-open"> only with open questions</label>
<label class="tick"><input type="checkbox" id="f-earlier"> earlier issues too</label>
<button type="reset">Clear</button>
</form>
<p id="shown" role="status" aria-live="polite"></p>
<table class="list" id="list">
<caption>Capital and ownership are the sums of the priced parts; a dash means not known or not applicable.</caption>
<colgroup><col class="c1"><col class="c2"><col class="c3"><col class="c4"><col class="c5"><col class="c6"><col class="c7"><col class="c8"></colgroup>
<thead><tr>
<th scope="col">Request</th><th scope="col">Title</th><th scope="col">Answer</th><th scope="col">Heads</th>
<th scope="col" class="number">Capital</th><th scope="col" class="number">Ownership</th>
<th scope="col" class="number">Lead time, days</th><th scope="col">Open questions</th>
</tr></thead>
<tbody>
{{ROWS:none}}
</tbody>
</table>
<p><button type="button" id="more" hidden>Show 500 more</button></p>
<h2>Totals</h2>
<table>
<thead><tr><th scope="col">Currency</th><th scope="col" class="number">Capital</th><th scope="col" class="number">Ownership</th><th scope="col" class="number">Requests</th><th scope="col" class="number">with parts on request</th></tr></thead>
<tbody>
{{#SUM}}
<tr><th scope="row">{{CURRENCY}}</th><td class="number">{{CAPITAL}}</td><td class="number">{{OWNERSHIP}}</td><td class="number">{{PRICED}}</td><td class="number">{{LACKING}}</td></tr>
{{/SUM}}
</tbody>
</table>
{{#QUESTIONS}}
<h2>Questions still open</h2>
<table>
<thead><tr><th scope="col" class="number">Requests</th><th scope="col">Question</th></tr></thead>
<tbody>
{{#QUESTION_COUNT}}
<tr><td class="number">{{COUNT}}</td><td>{{WORDS:none}}</td></tr>
{{/QUESTION_COUNT}}
</tbody>
</table>
{{/QUESTIONS}}
</main>
<footer>Preliminary engineering; the documents say what they rest on.</footer>
<script>
  (function () {
    "use strict";
    var table = document.getElementById("list");
    var body = table.tBodies[0];
    var rows = Array.prototype.slice.call(body.rows);
    var form = document.getElementById("filter");
    var shown = document.getElementById("shown");
    var more = document.getElementById("more");
    var step = 500, limit = step;
    var field = function (name) { return document.getElementById("f-" + name); };

    var entries = rows.map(function (row, place) {
      var heads = Array.prototype.map.call(row.querySelectorAll(".head"), function (head) { return head.textContent; });
      var names = row.cells[0].querySelector("bdi").textContent + " " + row.cells[1].textContent;
      return { row: row, place: place, heads: heads, text: names.toLowerCase(),
        capital: parseFloat(row.cells[4].dataset.sort), lead: parseFloat(row.cells[6].dataset.sort) };
    });

    function passes(entry) {
      var data = entry.row.dataset;
      var text = field("text").value.trim().toLowerCase();
      var capital = parseFloat(field("capital").value), lead = parseFloat(field("lead").value);
      return (field("earlier").checked || data.state === "latest") &&
        (text === "" || entry.text.indexOf(text) >= 0) &&
        (field("verdict").value === "" || data.verdict === field("verdict").value) &&
        (field("head").value === "" || entry.heads.indexOf(field("head").value) >= 0) &&
        (isNaN(capital) || entry.capital <= capital) && (isNaN(lead) || entry.lead <= lead) &&
        (!field("open").checked || data.open !== "0");
    }

    // A browser lays thousands of rows out slowly: so many are drawn, and as many more on demand.
    function draw() {
      var drawn = 0;
      entries.forEach(function (entry) {
        var hide = !entry.match || drawn >= limit;
        if (entry.row.hidden !== hide) { entry.row.hidden = hide; }
        if (!hide) { drawn += 1; }
      });
      var matches = entries.filter(function (entry) { return entry.match; }).length;
      shown.textContent = drawn + " of " + entries.length + " issues shown" +
        (drawn < matches ? ", " + (matches - drawn) + " more match" : "");
      more.hidden = drawn === matches;
    }

    function filter() {
      limit = step;
      entries.forEach(function (entry) { entry.match = passes(entry); });
      draw();
    }

    function value(entry, column) {
      var cell = entry.row.cells[column];
      return "sort" in cell.dataset ? cell.dataset.sort : cell.textContent;
    }

    function compare(column, numeric, sign) {
      return function (a, b) {
        var x = value(a, column), y = value(b, column);
        if ((x === "") !== (y === "")) { return x === "" ? 1 : -1; }
        var order = numeric ? parseFloat(x) - parseFloat(y) : x.localeCompare(y);
        return order ? sign * order : a.place - b.place;
      };
    }

    function sort(column, numeric, heading) {
      var up = heading.getAttribute("aria-sort") !== "ascending";
      Array.prototype.forEach.call(table.tHead.rows[0].cells, function (cell) { cell.removeAttribute("aria-sort"); });
      heading.setAttribute("aria-sort", up ? "ascending" : "descending");
      entries.sort(compare(column, numeric, up ? 1 : -1));
      var sorted = document.createDocumentFragment();
      entries.forEach(function (entry) { entry.row.hidden = true; sorted.appendChild(entry.row); });
      body.appendChild(sorted);
      draw();
    }

    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (heading, column) {
      var button = document.createElement("button");
      button.type = "button";
      button.textContent = heading.textContent;
      heading.textContent = "";
      heading.appendChild(button);
      button.addEventListener("click", function () { sort(column, column > 1, heading); });
    });
    form.addEventListener("input", filter);
    form.addEventListener("change", filter);
    form.addEventListener("submit", function (event) { event.preventDefault(); });
    form.addEventListener("reset", function () { setTimeout(filter, 0); });
    more.addEventListener("click", function () { limit += step; draw(); });
    window.addEventListener("beforeprint", function () { limit = entries.length; draw(); });
    form.hidden = false;
    filter();
    table.classList.add("ready");
  }());
</script>
</body>
</html>
