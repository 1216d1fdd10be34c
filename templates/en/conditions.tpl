{{%AUTOESCAPE context="XML"}}
<section title="Conditions and warnings" id="s-conditions">
{{#CONDITIONS}}
<p>The design stands on these conditions. Each shall be met, or the specification reissued. A value at which the design fails was moved alone; for placement the other assumed tolerances stood at the kind end of their range.</p>
<list ordered="yes">{{#ROW}}<item key="{{KEY}}">{{TEXT:none}} <i>To be shown by: {{OWNER:none}}.</i></item>{{/ROW}}</list>
{{/CONDITIONS}}
{{#WARNINGS}}
<note kind="caution" title="Warnings beside the figures"><list>{{#ROW}}<item key="{{KEY}}">{{TEXT:none}}</item>{{/ROW}}</list></note>
{{/WARNINGS}}
</section>
