{{%AUTOESCAPE context="XML"}}
<section title="Grenzen der Empfehlung" id="s-edges">
<p>Wie weit sich jede Größe für sich ändern darf, alles andere wie verlangt: bis die gewählten Köpfe, wie sie stehen, eine Prüfung nicht mehr bestehen; und bis eine andere Station empfohlen wird. Lampen, Trockner und Versorgung sind zu jedem Wert neu gewählt; {{INSTALLED:none}} Die Werte sind so gerundet, dass die Station gerade noch besteht. Gesucht wurde bis zum Doppelten und zur Hälfte des Verlangten. Ein Strich unter „Danach empfohlen“ heißt: Bis zu dieser Grenze wird keine andere Station empfohlen; was darüber hinaus passt, wurde hier nicht gesucht. Die Platzierung besteht hier wie in den Prüfungen: mit jeder angenommenen Toleranz am günstigen Ende ihres Bereichs. Wird die Anfrage mit einem Wert dieser Tabelle neu ausgegeben, steht dort die Rechnung dazu.</p>
<table columns="l:* l:17 r:20 r:24 l:26 r:24 l:32" caption="Grenzen, je eine Größe allein verändert" wide="yes">
<head><cell>Veränderte Größe</cell><cell>Einheit</cell><cell>Verlangt</cell><cell>Diese Köpfe bestehen bis</cell><cell>Begrenzt durch</cell><cell>Empfohlen bis</cell><cell>Danach empfohlen</cell></head>
{{#ROW}}
<row><cell>{{NAME:none}}</cell><cell>{{UNIT}}</cell><cell>{{NOW:none}}</cell><cell>{{PASSES:none}}</cell><cell>{{GATE:none}}</cell><cell>{{RECOMMENDED:none}}</cell><cell>{{BEYOND:none}}</cell></row>
{{/ROW}}
</table>
</section>
