{{%AUTOESCAPE context="HTML"}}
<tr data-verdict="{{VERDICT}}" data-state="{{STATE}}" data-open="{{OPEN}}">
<th scope="row"><a href="{{STEM}}.pdf"><bdi>{{ID}}</bdi></a> <span class="minor">{{REVISION}}, {{DATE}}{{#IS_EARLIER}}, earlier issue{{/IS_EARLIER}}</span>
<span class="files">{{#HEAD_COUNT}}<a href="{{STEM}}.bom.csv" aria-label="Parts list of {{ID}}">parts</a> {{/HEAD_COUNT}}<a href="{{STEM}}.json" aria-label="Figures of {{ID}}">figures</a></span></th>
<td><div><bdi>{{TITLE}}</bdi>{{#HAS_CUSTOMER}}<span class="minor"><bdi>{{CUSTOMER}}</bdi></span>{{/HAS_CUSTOMER}}</div></td>
<td data-sort="{{RANK}}"><div><span class="verdict {{VERDICT}}">{{VERDICT_WORDS:none}}</span></div></td>
<td data-sort="{{HEADS_TOTAL}}"><div>{{#NO_HEAD}}none{{/NO_HEAD}}{{#HEAD}}<bdi class="head">{{NAME}}</bdi>{{#HEAD_separator}}, {{/HEAD_separator}}{{/HEAD}}{{#HEAD_COUNT}} <span class="minor">{{HEADS_TOTAL}} in all</span>{{/HEAD_COUNT}}</div></td>
<td class="number" data-sort="{{CAPITAL_SORT}}"><div>{{CAPITAL}} {{CURRENCY}}{{#HAS_UNPRICED}}<span class="minor">{{UNPRICED}} on request</span>{{/HAS_UNPRICED}}</div></td>
<td class="number" data-sort="{{OWNERSHIP_SORT}}"><div>{{OWNERSHIP}} {{CURRENCY}}</div></td>
<td class="number" data-sort="{{LEAD_SORT}}"><div>{{LEAD}}</div></td>
<td data-sort="{{OPEN}}"><div>{{#NO_QUESTION}}none{{/NO_QUESTION}}{{#HAS_QUESTIONS}}<details><summary>{{OPEN}} open</summary><ul>{{#QUESTION}}<li>{{WORDS:none}}</li>{{/QUESTION}}</ul></details>{{/HAS_QUESTIONS}}</div></td>
</tr>
