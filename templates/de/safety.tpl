{{%AUTOESCAPE context="XML"}}
<section title="Sicherheit" id="s-safety">
<p>Diese Hinweise sind vorläufig und nach dem Inhalt von Anfrage und Station ausgewählt. Sie ersetzen nicht die Risikobeurteilung der ganzen Maschine. Örtliche Vorschriften gehen vor, und Auslegung, Aufstellung und Freigabe gehören in die Hand zugelassener oder sonst befähigter Personen. Von jeder genannten Norm ist die geltende Ausgabe zu prüfen.</p>
{{#NOTE}}
<note kind="warning" title="{{TITLE:none}}" key="{{KEY}}">{{TEXT:none}}</note>
{{/NOTE}}
</section>
