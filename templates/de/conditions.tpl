{{%AUTOESCAPE context="XML"}}
<section title="Bedingungen und Warnungen" id="s-conditions">
{{#CONDITIONS}}
<p>Der Entwurf steht auf diesen Bedingungen. Jede muss erfüllt oder die Spezifikation neu ausgegeben werden. Ein Wert, bei dem der Entwurf durchfällt, wurde für sich allein verändert; bei der Platzierung standen die übrigen Toleranzen am günstigen Ende ihres Bereichs.</p>
<list ordered="yes">{{#ROW}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/ROW}}</list>
{{/CONDITIONS}}
{{#WARNINGS}}
<note kind="caution" title="Warnungen neben den Zahlen"><list>{{#ROW}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/ROW}}</list></note>
{{/WARNINGS}}
</section>
