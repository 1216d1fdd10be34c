{{%AUTOESCAPE context="XML"}}
<note kind="{{KIND}}" title="{{VERDICT:none}}">{{SUMMARY:none}}</note>
{{#REPLACES}}<p>{{TEXT:none}} <a to="s-changes">{{LINK:none}}</a>.</p>{{/REPLACES}}
{{#STATION}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{DRAWING:none}}
<table columns="l:* r:36 r:56">
<head><cell>Key figure</cell><cell>This station</cell><cell>For comparison</cell></head>
{{#FIGURE}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell><cell>{{AGAINST:none}}</cell></row>
{{/FIGURE}}
</table>
{{#PRICED}}<p key="{{KEY}}"><b>Price.</b> {{TEXT:none}}</p>{{/PRICED}}
{{/STATION}}
{{#FAILS}}
<p><b>What fails, and by how much.</b> The fewest limits are missed by head {{HEAD}}:</p>
<list>{{#REASON}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/REASON}}</list>
<p key="{{KEY}}"><b>Smallest change that helps.</b> {{MISS:none}}{{#MUSTS}} {{TEXT:none}}{{/MUSTS}}</p>
<p>Every head with all its reasons stands in <a to="s-heads">the section on heads considered</a>.</p>
{{/FAILS}}
{{#NO_HEADS}}
<p>The catalogue holds no head to consider.</p>
{{/NO_HEADS}}
{{#CONDITIONS}}
<p><b>Conditions.</b></p>
<list>{{#CONDITION}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/CONDITION}}</list>
{{#MORE}}<p>{{COUNT}} more in the specification: see <a to="s-conditions">conditions and warnings</a>.</p>{{/MORE}}
{{/CONDITIONS}}
{{#QUESTIONS}}
<p><b>{{HEADING:none}}</b></p>
<list ordered="yes">{{#QUESTION}}<item>{{TEXT:none}}</item>{{/QUESTION}}</list>
{{#MORE}}<p>{{COUNT}} more in the specification: see <a to="s-questions">questions to the customer</a>.</p>{{/MORE}}
{{/QUESTIONS}}
