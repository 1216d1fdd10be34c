{{%AUTOESCAPE context="XML"}}
<section title="Spielraum um die Antwort" id="s-edges">
<p>Wie weit sich jede Zahl für sich bewegen darf, alles andere wie verlangt: bis die gewählten Köpfe, wie sie stehen, eine Prüfung nicht mehr bestehen; und bis eine andere Station empfohlen wird. Die Werte sind zur bestehenden Seite gerundet. Gesucht wurde bis zum Doppelten und zur Hälfte des Verlangten.</p>
<table columns="l:* l:17 r:16 r:22 l:28 r:24 l:34" caption="Grenzen, je eine Zahl allein bewegt" wide="yes">
<head><cell>Bewegte Zahl</cell><cell>Einheit</cell><cell>Verlangt</cell><cell>Diese Köpfe bestehen bis</cell><cell>Begrenzt durch</cell><cell>Empfohlen bis</cell><cell>Danach empfohlen</cell></head>
{{#ROW}}
<row><cell>{{NAME:none}}</cell><cell>{{UNIT}}</cell><cell>{{NOW:none}}</cell><cell>{{PASSES:none}}</cell><cell>{{GATE:none}}</cell><cell>{{RECOMMENDED:none}}</cell><cell>{{BEYOND:none}}</cell></row>
{{/ROW}}
</table>
</section>
