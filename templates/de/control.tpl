{{%AUTOESCAPE context="XML"}}
<section title="Dokumentlenkung" id="s-control">
<table columns="l:22 l:28 l:* l:50" caption="Revisionen">
<head><cell>Revision</cell><cell>Ausgabedatum</cell><cell>Antwort</cell><cell>Datendatei, Anfang der SHA-256-Prüfsumme</cell></head>
{{#REVISION}}<row><cell>{{NAME}}</cell><cell>{{DATE}}</cell><cell>{{VERDICT:none}}</cell><cell>{{RECORD:none}}</cell></row>{{/REVISION}}
</table>
{{#PRICES}}<p key="{{KEY}}"><b>Gültigkeit der Preise.</b> {{TEXT:none}}</p>{{/PRICES}}
{{#LINE}}<p>{{TEXT}}</p>{{/LINE}}
{{#REMARKS}}<note kind="info" title="Bemerkungen des Bearbeiters im Wortlaut der Anfrage" key="{{KEY}}">{{TEXT}}</note>{{/REMARKS}}
<section title="Unterschriften" id="s-signoff">
{{#ACCEPTS}}<p>Status VORLÄUFIG, bis alle vier unterschrieben haben. Mit der Unterschrift werden Anforderungen, Annahmen und Bedingungen dieser Ausgabe anerkannt; sie ist keine Freigabe zum Bau.</p>{{/ACCEPTS}}
{{#READS}}<p>Diese Ausgabe bietet nichts an, was anerkannt werden könnte. Eine Unterschrift besagt, dass gelesen wurde, was entgegensteht.</p>{{/READS}}
<table columns="l:30 l:* l:25 l:45" lines="yes" wide="yes">
<head><cell>Rolle</cell><cell>Name</cell><cell>Datum</cell><cell>Unterschrift</cell></head>
{{#SIGN}}<row height="13" keep="yes"><cell><b>{{ROLE:none}}</b> {{MEANING:none}}</cell><cell>{{NAME}}</cell><cell/><cell/></row>{{/SIGN}}
</table>
</section>
</section>
