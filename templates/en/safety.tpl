{{%AUTOESCAPE context="XML"}}
<section title="Safety" id="s-safety">
<p>These notes are preliminary and chosen by what the request and the station contain. They do not replace the risk assessment of the whole machine. Local codes prevail, and design, installation and release belong to licensed or otherwise competent persons. Check the edition in force of every standard named.</p>
{{#NOTE}}
<note kind="warning" title="{{TITLE:none}}" key="{{KEY}}">{{TEXT:none}}</note>
{{/NOTE}}
</section>
