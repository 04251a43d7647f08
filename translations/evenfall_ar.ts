<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar" sourcelanguage="en">
<context>
    <name></name>
    <message id="common.back">
        <source>Back</source>
        <extracomment>Button, top of most pages: go to the page before. Nothing already noted is lost.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="figure.larger">
        <source>Larger picture</source>
        <extracomment>Button under a picture: shows the same picture over the whole screen.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.awake">
        <source>I am awake</source>
        <extracomment>Night page, a very large area: notes that the person lies awake.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.back_to_sleep">
        <source>Going back to sleep</source>
        <extracomment>Night page, the same area later: notes that the person tries to sleep again.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.getting_up">
        <source>Getting up</source>
        <extracomment>Night page, a very large area: notes that the person gets out of bed for a while.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.back_in_bed">
        <source>Back in bed</source>
        <extracomment>Night page, the same area later: notes that the person is in bed again.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.cables_first">
        <source>Free the cables first, then walk</source>
        <extracomment>Night page, a caution under &quot;Getting up&quot;: cables can catch on the bed and trip the person.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.came_off">
        <source>Something came off</source>
        <extracomment>Night page, a very large area: notes that a part of the kit came off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.back_on">
        <source>It is back on</source>
        <extracomment>Night page, the same area later: notes that the part is in place again.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.what_should_i_do">
        <source>What should I do?</source>
        <extracomment>Night page, apart from what is noted: opens help for what to do right now.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.up_for_day">
        <source>Up for the day</source>
        <extracomment>Night page, smaller area: ends the night. It asks once more before it does.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.up_confirm_title">
        <source>Are you up for the day?</source>
        <extracomment>Night page, asked once more before the night ends.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.up_confirm_yes">
        <source>Yes, end the night</source>
        <extracomment>Night page, answer: the night ends now and the morning page comes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.up_confirm_no">
        <source>No, go on with the night</source>
        <extracomment>Night page, answer: the night goes on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.which_title">
        <source>What came off?</source>
        <extracomment>Night page, asked so that the part can be noted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.which_none">
        <source>None of these</source>
        <extracomment>Night page, answer under the pictures of the parts.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.still_on_title">
        <source>Is everything still on?</source>
        <extracomment>Night page, asked once when the person is back in bed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.still_on_yes">
        <source>Yes, all on</source>
        <extracomment>Night page, answer: every part of the kit is in place.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.still_on_no">
        <source>Something is off</source>
        <extracomment>Night page, answer: a part of the kit is off; the next page asks which.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help_title">
        <source>What is it?</source>
        <extracomment>Night page, heading of the help for right now.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.undo">
        <source>Undo</source>
        <extracomment>Night page, button: takes back what was just noted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.close">
        <source>Close, go dark</source>
        <extracomment>Night page, button: leaves this page; the screen goes dark.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.ok">
        <source>OK</source>
        <extracomment>Night page, button under advice: the person has read it; the screen goes dark.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="panel.close">
        <source>Close this and go on</source>
        <extracomment>Button under a larger picture or an explanation: closes it and shows the page again.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="common.more_below">
        <source>More below ↓</source>
        <extracomment>Button below a page that is longer than the screen: moves the page up to show the rest.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="common.to_top">
        <source>Back to the top ↑</source>
        <extracomment>Button below a long page when its end is shown: moves back to the top of the page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.right_when">
        <source>It is right when</source>
        <extracomment>Small heading over the sentence that tells how to know the step is done right.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.wake">
        <source>Wake the page</source>
        <extracomment>Dark night page, read by screen readers: touching anywhere shows the page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.trouble">
        <source>This isn&apos;t working</source>
        <extracomment>Button on each step: opens questions that help when the step does not work out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.why">
        <source>Why this?</source>
        <extracomment>Small button on a step: explains why this part is needed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.say_again">
        <source>Say it again</source>
        <extracomment>Small button on a step: reads the page aloud once more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.no_sound">
        <source>Why no sound?</source>
        <extracomment>Small button in place of &quot;Say it again&quot; when there is no sound: explains why.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
