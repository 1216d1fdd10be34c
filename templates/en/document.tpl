{{%AUTOESCAPE context="XML"}}
<document title="{{TITLE}}" customer="{{CUSTOMER}}" id="{{ID}}" language="{{LANGUAGE}}" date="{{DATE}}"
  author="{{OWNER}}" creator="{{CREATOR}}" subject="System specification" keywords="{{KEYWORDS}}">
<titleblock note="{{CONFIDENTIAL}}">
<cell name="owner" label="Legal owner">{{OWNER}}</cell>
<cell name="title" label="Title">{{TITLE}}</cell>
<cell name="status" label="Status">PRELIMINARY</cell>
<cell name="number" label="Identification number">{{ID}}</cell>
<cell name="type" label="Document type">System specification</cell>
<cell name="creator" label="Creator">{{CREATOR}}</cell>
<cell name="approval" label="Approval person">{{APPROVAL}}</cell>
<cell name="date" label="Date of issue">{{DATE}}</cell>
<cell name="revision" label="Revision">{{REVISION}}</cell>
<cell name="language" label="Language">{{LANGUAGE}}</cell>
<cell name="sheet" label="Sheet"/>
</titleblock>
<front>
{{FRONT:none}}
</front>
<contents title="Contents" depth="2"/>
{{SECTIONS:none}}
</document>
