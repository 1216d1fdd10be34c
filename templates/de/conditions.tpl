{{%AUTOESCAPE context="XML"}}
<section title="Bedingungen und Warnungen" id="s-conditions">
{{#CONDITIONS}}
<p>Der Entwurf beruht auf diesen Bedingungen. Wird eine nicht erfüllt, ist die Spezifikation neu auszugeben. Ein Wert, bei dem der Entwurf nicht besteht, wurde für sich allein verändert; bei der Platzierung lagen die übrigen Toleranzen am günstigen Ende ihres Bereichs.</p>
<list ordered="yes">{{#ROW}}<item key="{{KEY}}">{{TEXT:none}} <i>Nachzuweisen durch: {{OWNER:none}}.</i></item>{{/ROW}}</list>
{{/CONDITIONS}}
{{#WARNINGS}}
<note kind="caution" title="Warnungen zu einzelnen Werten"><list>{{#ROW}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/ROW}}</list></note>
{{/WARNINGS}}
</section>
