{{%AUTOESCAPE context="XML"}}
<section title="Document control" id="s-control">
<table columns="l:22 l:28 l:* l:50" caption="Revisions">
<head><cell>Revision</cell><cell>Date of issue</cell><cell>Answer</cell><cell>Data file, SHA-256 begins</cell></head>
{{#REVISION}}<row><cell>{{NAME}}</cell><cell>{{DATE}}</cell><cell>{{VERDICT:none}}</cell><cell>{{RECORD:none}}</cell></row>{{/REVISION}}
</table>
{{#PRICES}}<p key="{{KEY}}"><b>Validity of the prices.</b> {{TEXT:none}}</p>{{/PRICES}}
{{#LINE}}<p>{{TEXT}}</p>{{/LINE}}
{{#REMARKS}}<note kind="info" title="Remarks of the engineer, as the request has them" key="{{KEY}}">{{TEXT}}</note>{{/REMARKS}}
<section title="Sign-off" id="s-signoff">
{{#ACCEPTS}}<p>Status PRELIMINARY until all four have signed. A signature accepts the requirements, the assumptions and the conditions of this issue; it is not a release for building.</p>{{/ACCEPTS}}
{{#READS}}<p>This issue offers nothing that could be accepted. A signature says that what stands in the way has been read.</p>{{/READS}}
<table columns="l:30 l:* l:25 l:45" lines="yes" wide="yes">
<head><cell>Role</cell><cell>Name</cell><cell>Date</cell><cell>Signature</cell></head>
{{#SIGN}}<row height="13" keep="yes"><cell><b>{{ROLE:none}}</b> {{MEANING:none}}</cell><cell>{{NAME}}</cell><cell/><cell/></row>{{/SIGN}}
</table>
</section>
</section>
