{{%AUTOESCAPE context="XML"}}
<note kind="{{KIND}}" title="{{VERDICT:none}}">{{SUMMARY:none}}</note>
{{#REPLACES}}<p>{{TEXT:none}} <a to="s-changes">{{LINK:none}}</a>.</p>{{/REPLACES}}
{{#STATION}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{DRAWING:none}}
<table columns="l:* r:36 r:56">
<head><cell>Kennzahl</cell><cell>Diese Station</cell><cell>Zum Vergleich</cell></head>
{{#FIGURE}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell><cell>{{AGAINST:none}}</cell></row>
{{/FIGURE}}
</table>
{{#PRICED}}<p key="{{KEY}}"><b>Preis.</b> {{TEXT:none}}</p>{{/PRICED}}
{{/STATION}}
{{#FAILS}}
<p><b>Was nicht besteht und um wie viel.</b> Die wenigsten Grenzen verfehlt Kopf {{HEAD}}:</p>
<list>{{#REASON}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/REASON}}</list>
<p key="{{KEY}}"><b>Kleinste Änderung, die hilft.</b> {{MISS:none}}{{#MUSTS}} {{TEXT:none}}{{/MUSTS}}</p>
<p>Jeder Kopf mit allen Gründen steht im <a to="s-heads">Abschnitt „Betrachtete Köpfe“</a>.</p>
{{/FAILS}}
{{#NO_HEADS}}
<p>Der Katalog enthält keinen Kopf.</p>
{{/NO_HEADS}}
{{#CONDITIONS}}
<p><b>Bedingungen.</b></p>
<list>{{#CONDITION}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/CONDITION}}</list>
{{#MORE}}<p>{{COUNT}} weitere in der Spezifikation: siehe <a to="s-conditions">Bedingungen und Warnungen</a>.</p>{{/MORE}}
{{/CONDITIONS}}
{{#QUESTIONS}}
<p><b>{{HEADING:none}}</b></p>
<list ordered="yes">{{#QUESTION}}<item>{{TEXT:none}}</item>{{/QUESTION}}</list>
{{#MORE}}<p>{{COUNT}} weitere in der Spezifikation: siehe <a to="s-questions">Fragen an den Kunden</a>.</p>{{/MORE}}
{{/QUESTIONS}}
