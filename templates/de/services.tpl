{{%AUTOESCAPE context="XML"}}
<section title="Medien und Schnittstellen" id="s-services">
<p>Was die Station vom Gebäude und von der Linie braucht, {{SPEED:none}} und größter Belegung, soweit es hier berechnet ist. Anschlüsse, Leistung beim Anfahren und in Bereitschaft und alles Unbekannte nennen die Hersteller der Einrichtungen; vorher soll nichts verlegt werden. „Unbekannt, zu erfragen“: Was die Station betrifft, erfragt ihr Lieferant bei den Herstellern und sagt es dem Betreiber vor der Bestellung; was das Gebäude betrifft, nennt der Betreiber dem Lieferanten mit den Antworten auf die Fragen. Der Bedarf ist berechnet; eingebaut ist, wofür die gewählten Teile ausgelegt sind, und danach werden Leitungen und Kanäle bemessen.</p>
<table columns="l:23 l:18 l:22 l:20 l:*" caption="Medien">
<head><cell>Medium</cell><cell>Für</cell><cell>Bedarf</cell><cell>Eingebaut, nach Katalog</cell><cell>Zu klären</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{WHAT:none}}</cell><cell>{{PART:none}}</cell><cell>{{AMOUNT:none}}</cell><cell>{{INSTALLED:none}}</cell><cell>{{NOTE:none}}</cell></row>{{/ROW}}
</table>
<table columns="l:31 l:* r:24" caption="Signale und Daten">
<head><cell>Signal</cell><cell>Von wo nach wo, und wozu</cell><cell>Wert</cell></head>
{{#SIGNAL}}<row key="{{KEY}}"><cell>{{WHAT:none}}</cell><cell>{{WAY:none}}</cell><cell>{{FIGURE:none}}</cell></row>{{/SIGNAL}}
</table>
<table columns="l:* l:33 l:27" caption="Wer was stellt: ein Vorschlag, bis ein Vertrag anderes sagt" lines="yes">
<head><cell>Gegenstand</cell><cell>Vorschlag</cell><cell>Vereinbart</cell></head>
{{#SHARE}}<row><cell>{{MATTER:none}}</cell><cell>{{WHO:none}}</cell><cell/></row>{{/SHARE}}
</table>
</section>
