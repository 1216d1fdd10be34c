{{%AUTOESCAPE context="XML"}}
<section title="Spielraum um die Antwort" id="s-edges">
<p>Wie weit sich jede Zahl der Anfrage für sich bewegen darf, alles andere wie verlangt: bis die gewählten Köpfe, wie sie stehen, eine Prüfung nicht mehr bestehen; bis eine andere Station empfohlen wird; bis nichts im Katalog mehr passt. Die Werte sind zur bestehenden Seite gerundet. Gesucht wurde bis zum Doppelten und zur Hälfte des Verlangten.</p>
<table columns="l:* r:22 r:24 l:28 r:24 l:32 r:24" caption="Grenzen, je eine Zahl allein bewegt" wide="yes">
<head><cell>Bewegte Zahl</cell><cell>Verlangt</cell><cell>Diese Köpfe bestehen bis</cell><cell>Begrenzt durch</cell><cell>Empfohlen bis</cell><cell>Danach</cell><cell>Etwas passt bis</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{NOW:none}}</cell><cell>{{PASSES:none}}</cell><cell>{{GATE:none}}</cell><cell>{{RECOMMENDED:none}}</cell><cell>{{BEYOND:none}}</cell><cell>{{ANY:none}}</cell></row>
{{/ROW}}
</table>
</section>
