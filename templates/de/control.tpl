{{%AUTOESCAPE context="XML"}}
<section title="Dokumentlenkung" id="s-control">
<table columns="l:22 l:28 l:* l:50" caption="Revisionen">
<head><cell>Revision</cell><cell>Ausgabedatum</cell><cell>Antwort</cell><cell>Datei, SHA-256 beginnt</cell></head>
{{#REVISION}}<row><cell>{{NAME}}</cell><cell>{{DATE}}</cell><cell>{{VERDICT:none}}</cell><cell>{{RECORD:none}}</cell></row>{{/REVISION}}
</table>
{{#PRICES}}<p key="{{KEY}}"><b>Gültigkeit der Preise.</b> {{TEXT:none}}</p>{{/PRICES}}
{{#LINE}}<p>{{TEXT}}</p>{{/LINE}}
{{#REMARKS}}<note kind="info" title="Bemerkungen des Bearbeiters, wie in der Anfrage" key="{{KEY}}">{{TEXT}}</note>{{/REMARKS}}
<section title="Unterschriften" id="s-signoff">
<p>Status VORLÄUFIG, bis alle vier unterschrieben haben. Eine Unterschrift nimmt Anforderungen, Annahmen und Bedingungen dieser Ausgabe an; sie ist keine Freigabe zum Bau.</p>
<table columns="l:30 l:* l:25 l:45" lines="yes" wide="yes">
<head><cell>Rolle</cell><cell>Name</cell><cell>Datum</cell><cell>Unterschrift</cell></head>
{{#SIGN}}<row height="13"><cell><b>{{ROLE:none}}</b> {{MEANING:none}}</cell><cell>{{NAME}}</cell><cell/><cell/></row>{{/SIGN}}
</table>
</section>
</section>
