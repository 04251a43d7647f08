<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name></name>
    <message id="common.back">
        <source>Back</source>
        <extracomment>Button, top of most pages: go to the page before. Nothing already noted is lost.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="figure.larger">
        <source>Larger picture</source>
        <extracomment>Button with a picture in it: shows the same picture over the whole screen.</extracomment>
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
    <message id="common.change">
        <source>Change</source>
        <extracomment>Button beside an answer: opens it to change it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="common.remove">
        <source>Remove</source>
        <extracomment>Button beside an event of the night: takes it off the list.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="question.skip">
        <source>Skip this question</source>
        <extracomment>Button on each question: leaves the question without an answer.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.yes">
        <source>Yes</source>
        <extracomment>Sensor check, answer: this sensor is as it should be.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.not_right">
        <source>Not right</source>
        <extracomment>Sensor check, answer: this sensor is not as it should be; opens help for it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.how_sure">
        <source>How sure are you?</source>
        <extracomment>Heading over four answers: exactly, about, between two times, not sure.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.exact">
        <source>Exactly then</source>
        <extracomment>How sure the person is of a time: to the minute.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.about">
        <source>About then</source>
        <extracomment>How sure the person is of a time: give or take some minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.between">
        <source>Between two times</source>
        <extracomment>How sure the person is of a time: it lay between two times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.unsure">
        <source>I am not sure</source>
        <extracomment>How sure the person is of a time: they do not know it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.minus_hour">
        <source>− 1 h</source>
        <extracomment>Button: sets the time 1 hour earlier.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.minus_ten">
        <source>− 10 min</source>
        <extracomment>Button: sets the time 10 minutes earlier.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.minus_one">
        <source>− 1 min</source>
        <extracomment>Button: sets the time 1 minute earlier.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.plus_hour">
        <source>+ 1 h</source>
        <extracomment>Button: sets the time 1 hour later.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.plus_ten">
        <source>+ 10 min</source>
        <extracomment>Button: sets the time 10 minutes later.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.plus_one">
        <source>+ 1 min</source>
        <extracomment>Button: sets the time 1 minute later.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="call.heading">
        <source>Call your clinic</source>
        <extracomment>Small heading over the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.questions">
        <source>Questions? Call your clinic</source>
        <extracomment>Small heading over the clinic&apos;s number at the end.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.none">
        <source>None of these</source>
        <extracomment>First page of questions, answer: none of the conditions listed is true for me.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.some">
        <source>One or more of these</source>
        <extracomment>First page of questions, answer: one or more of the conditions listed is true for me.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.works_now">
        <source>It works now</source>
        <extracomment>Help page, button under advice: the trouble is gone, go on with the step.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.still_not">
        <source>Still not right</source>
        <extracomment>Help page, button under advice: the trouble is still there; leads to more help.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.or_call">
        <source>Or call your clinic</source>
        <extracomment>Small heading over the clinic&apos;s number on the help page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.different">
        <source>It looks different</source>
        <extracomment>Light page, button: the recorder&apos;s light looks like none of those shown; opens help.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.leave">
        <source>Leave both as they are</source>
        <extracomment>Two answers do not fit: keeps both as they are, for the clinic to see.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.change">
        <source>Change this one</source>
        <extracomment>Two answers do not fit: opens this one of the two to change it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.fine">
        <source>My skin is fine</source>
        <extracomment>Skin check, answer: the skin under the tape looks and feels as usual.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.hurt">
        <source>It is red or it hurts</source>
        <extracomment>Skin check, answer: the skin under the tape is not as usual; leads to what to do.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.not_before">
        <source>Not before</source>
        <extracomment>Heading over the earlier of two times: it was not before this.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.not_after">
        <source>Not after</source>
        <extracomment>Heading over the later of two times: it was not after this.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.width_less">
        <source>5 min less</source>
        <extracomment>Button beside &quot;give or take 15 minutes&quot;: makes the span 5 minutes smaller.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="time.width_more">
        <source>5 min more</source>
        <extracomment>Button beside &quot;give or take 15 minutes&quot;: makes the span 5 minutes larger.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.call">
        <source>Call your clinic if you need help</source>
        <extracomment>Small heading over the clinic&apos;s number on a page that says the app is in trouble.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.for_staff">
        <source>For the clinic&apos;s staff</source>
        <extracomment>Small heading over a technical message that only the clinic&apos;s staff needs.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="main.right">
        <source>That is right</source>
        <extracomment>Button: the time that the night notes say is right.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="unit.minutes">
        <source>minutes</source>
        <extracomment>Unit beside a number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.give_or_take">
        <source>give or take %1 minutes</source>
        <extracomment>How sure a time is. %1: minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.add_awake">
        <source>Add a time awake</source>
        <extracomment>Button: note one more time awake in the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.add_off">
        <source>Add something that came off</source>
        <extracomment>Button: note one more part that came off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.awake_from">
        <source>When did you wake up?</source>
        <extracomment>Question about one time awake.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.awake_to">
        <source>When did you fall asleep again?</source>
        <extracomment>Question about the same time awake.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.off_from">
        <source>When did it come off: %1?</source>
        <extracomment>Question. %1: name of a part, such as &quot;finger clip&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.off_to">
        <source>When was it back on: %1?</source>
        <extracomment>Question. %1: name of a part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.off_end">
        <source>Did you put it back on: %1?</source>
        <extracomment>Question with two answers. %1: name of a part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.off_end.yes">
        <source>Yes, I put it back on</source>
        <extracomment>Answer: it was put back on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.off_end.no">
        <source>No, it stayed off</source>
        <extracomment>Answer: it stayed off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.only_half">
        <source>a half</source>
        <extracomment>Half an hour and nothing more, in &quot;about %1 hours&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.picture_text">
        <source>Picture of the night: one row for each part, and one for sleep</source>
        <extracomment>The picture of the night, for screen readers. The same is said in words above it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.question">
        <source>How does your skin look?</source>
        <extracomment>Question about the skin where tape was.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.again">
        <source>Try again</source>
        <extracomment>Button on a page of trouble: try once more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.no_voice">
        <source>There is no voice on this tablet. All the words are on the page.</source>
        <oldsource>No voice on this tablet</oldsource>
        <extracomment>Said where the voice would be, when there is none.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.title">
        <source>Tonight: your sleep test at home</source>
        <extracomment>Title of the first page in the evening.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.body">
        <source>Start about 30 minutes before bed. This page goes with you, step by step.</source>
        <extracomment>First page, under the title: when to begin and what this page does.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.code">
        <source>Study code %1</source>
        <extracomment>First page, small. %1 is the study code, such as SM-0417.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.night">
        <source>Night %1 of %2</source>
        <extracomment>First page, small, when the kit is used for more than one night. %1 is the night, %2 how many there are.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.title">
        <source>Before you start</source>
        <extracomment>Title of the page with questions that the clinic must know about.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.intro">
        <source>Is one of these true for you?</source>
        <extracomment>Stands over a list; each line of the list completes it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.tape_allergy">
        <source>I am allergic to tape</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.broken_skin">
        <source>My skin is sore or broken where tape or pads go</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.oxygen">
        <source>I use oxygen or a breathing machine</source>
        <extracomment>Line in the list. The machine may be CPAP or a ventilator.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.implant">
        <source>I have a pacemaker or another implant</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.under_18">
        <source>I am under 18</source>
        <extracomment>Line in the list: the person&apos;s age in years.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.pregnant">
        <source>I am pregnant</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.latex">
        <source>I am allergic to latex</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="first.condition.cords">
        <source>Someone in my bed could get caught in cords: a small child, or a person who gets confused</source>
        <extracomment>Line in the list: someone in the bed who could get caught in cables and tubes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="call.title">
        <source>Call your clinic before you go on</source>
        <extracomment>Title of the page that follows when one of the conditions is true.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="call.body">
        <source>Tell them what is true for you. They decide if you can use the kit tonight. Do not change your treatment on your own.</source>
        <extracomment>Under that title. The clinic decides; the person changes nothing on their own.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="call.outside_hours">
        <source>When the clinic is closed</source>
        <extracomment>Small heading over a second phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="call.emergency">
        <source>Chest pain, severe trouble breathing or fainting: take the kit off and call %1.</source>
        <extracomment>Caution. %1 is the local emergency number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="call.go_on">
        <source>I called. Go on</source>
        <extracomment>Button: the person has called the clinic and may go on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="call.hours">
        <source>Open: %1</source>
        <extracomment>Opening hours of the clinic. %1 is days and times, such as &quot;Mon - Fri: 8:00 AM - 5:00 PM&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="kit.title">
        <source>See that everything is here</source>
        <extracomment>Title of the list of what is in the bag.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="kit.body">
        <source>Lay the parts on a table or on the bed. Compare them with the pictures. Somebody who helps you is welcome.</source>
        <oldsource>Lay the parts on a table or on the bed. Compare them with the pictures.</oldsource>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="kit.all_here">
        <source>Everything is here</source>
        <extracomment>Button: nothing is missing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="kit.missing">
        <source>Something is missing</source>
        <extracomment>Button: leads to the clinic&apos;s number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="item.tape_roll">
        <source>roll of tape</source>
        <extracomment>A thing in the bag, lower case.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="item.pouch">
        <source>pouch</source>
        <extracomment>A thing in the bag, lower case: a soft pouch that holds the kit.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="item.charger">
        <source>charger</source>
        <extracomment>A thing in the bag, lower case.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="item.return_box">
        <source>return box</source>
        <extracomment>A thing in the bag, lower case: the box in which the kit goes back.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="item.batteries">
        <source>batteries</source>
        <extracomment>A thing in the bag, lower case.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="item.leaflet">
        <source>leaflet</source>
        <extracomment>A thing in the bag, lower case: printed instructions.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="pace.on_time">
        <source>In bed by about %1 - on time</source>
        <extracomment>Under the drawn person. %1 is a time of day, the planned one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="pace.later">
        <source>In bed by about %1. That is fine.</source>
        <extracomment>Under the drawn person, when it gets later than planned. No blame. %1 is a time of day.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="pace.early">
        <source>In bed by about %1. No need to hurry.</source>
        <extracomment>Under the drawn person, when it goes faster than planned. %1 is a time of day.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="main.it_is_on">
        <source>It is on</source>
        <extracomment>Large button of a step: the part is on the body.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="main.done">
        <source>Done</source>
        <extracomment>Large button of a step: it is done.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="main.plugged">
        <source>It is plugged in</source>
        <extracomment>Large button of a step: the plug is in.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="main.next">
        <source>Go on</source>
        <extracomment>Large button: go on to the next page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="main.switched">
        <source>I slid the switch</source>
        <extracomment>Large button of the step that turns the recorder on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.title">
        <source>Is each part right?</source>
        <extracomment>Title of the page on which each sensor is looked at once more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.body">
        <source>Look at each part in turn. Tap Yes if it is right.</source>
        <extracomment>Under that title. &quot;Yes&quot; is the button beside each part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.effort_belt.expect">
        <source>Flat and snug, and 2 fingers fit under it</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.effort_sensor.expect">
        <source>Snapped on to the belt on both sides</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.recorder.expect">
        <source>Held tight, with all plugs in</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.nasal_cannula.expect">
        <source>Prongs in the nose, tube over the ears, loose enough to swallow</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.breath_sensor.expect">
        <source>Above the lip, and its tips touch no skin</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.finger_probe.expect">
        <source>Nail up, finger all the way in, cable flat</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.ecg_electrodes.expect">
        <source>Both pads stick flat all around</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.body_position_sensor.expect">
        <source>In the middle, with the arrow to your head</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.snore_microphone.expect">
        <source>Flat on the side of your neck</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.leg_electrodes.expect">
        <source>Both pads stick flat, and the cable has slack</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="check.all_right">
        <source>All parts are right</source>
        <extracomment>Large button: every part was looked at and is right.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.title">
        <source>What does the light do?</source>
        <extracomment>Title of the page on which the person says what the recorder&apos;s light does.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.body">
        <source>Look at the light on the recorder. It may take %1 seconds. Then tap what you see.</source>
        <extracomment>Under that title. %1 is a number of seconds.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.look.dark">
        <source>The light stays dark</source>
        <extracomment>A way the light can look: it does not shine.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.look.steady">
        <source>The %1 light stays on</source>
        <extracomment>A way the light can look. %1 is a colour, such as &quot;green&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.look.one_short">
        <source>The %1 light: 1 short blink, then a pause</source>
        <extracomment>A way the light can look. %1 is a colour.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.look.short">
        <source>The %1 light: %2 short blinks, then a pause</source>
        <extracomment>A way the light can look. %1 is a colour, %2 a number from 2 on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.look.long">
        <source>The %1 light: 1 long blink, again and again</source>
        <extracomment>A way the light can look. %1 is a colour.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.look.even">
        <source>The %1 light blinks evenly</source>
        <extracomment>A way the light can look: on and off for the same time. %1 is a colour.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="colour.white">
        <source>white</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="colour.green">
        <source>green</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="colour.amber">
        <source>amber</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;. An orange yellow.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="colour.red">
        <source>red</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="colour.blue">
        <source>blue</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.then.go_on">
        <source>The recorder is recording. You can go to bed.</source>
        <extracomment>Said when the light that was tapped means that all is well.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.then.check_plugs">
        <source>Push each plug in once more. Then look at the light again.</source>
        <extracomment>Said when the light that was tapped means that a plug may be loose.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.then.start_again">
        <source>Go back 1 page and start the recorder once more. Then look at the light again.</source>
        <extracomment>Said when the light that was tapped means that the recorder did not start.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.then.call_clinic">
        <source>Call your clinic. Tap &quot;It looks different&quot; to see the number.</source>
        <extracomment>Said when the light that was tapped needs the clinic. &quot;It looks different&quot; is the button on the page that leads to the number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="light.recording_button">
        <source>It is recording. Go on</source>
        <extracomment>Large button: the light shows that it is recording.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.title">
        <source>Lights out</source>
        <extracomment>Title of the last page before the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.line.bathroom">
        <source>Bathroom? Go now. Free the cables first, then walk.</source>
        <oldsource>Do you need the bathroom? Go now. Free the cables first, then walk.</oldsource>
        <extracomment>Line on the page before the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.line.phone">
        <source>Put your phone away from your pillow, but within reach.</source>
        <extracomment>Line on the page before the night: where the phone should be.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.line.pets">
        <source>Keep pets and children out of the bed and off the cables.</source>
        <oldsource>Keep pets and children out of the bed and away from the cables.</oldsource>
        <extracomment>Line on the page before the night, a caution.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.line.tablet">
        <source>Leave the tablet beside the bed, on its charger.</source>
        <extracomment>Line on the page before the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.line.touch">
        <source>Touch the dark page once to wake it. Then tap to note.</source>
        <oldsource>Touch the dark page once to wake it. Then tap what you want to note.</oldsource>
        <extracomment>Line on the page before the night: how the dark page works.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.caution">
        <source>Nobody is watching you tonight. Chest pain, severe trouble breathing or fainting: take the kit off and call %1.</source>
        <extracomment>Caution on the page before the night. %1 is the local emergency number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.main">
        <source>Lights out now</source>
        <extracomment>Large button: the light goes out now and the page goes dark.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.watch">
        <source>Nobody is watching. Chest pain, severe trouble breathing or fainting: take the kit off and call %1.</source>
        <extracomment>On every night page. %1 is the local emergency number. Short.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.awake">
        <source>Noted: awake</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.asleep">
        <source>Noted: going back to sleep</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.up">
        <source>Noted: getting up</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.back">
        <source>Noted: back in bed</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.off">
        <source>Noted: %1 is off</source>
        <extracomment>Answer to a tap at night; says what was noted. %1 is a part, such as &quot;finger clip&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.on">
        <source>Noted: %1 is back on</source>
        <extracomment>Answer to a tap at night; says what was noted. %1 is a part, such as &quot;finger clip&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.all_on">
        <source>Noted: everything is still on</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="noted.undone">
        <source>Taken back: the last note</source>
        <extracomment>Answer to &quot;Undo&quot; at night: the last note is taken back.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.which.off">
        <source>What came off?</source>
        <extracomment>Heading over pictures of the parts.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.which.on">
        <source>What is back on?</source>
        <extracomment>Heading over pictures of the parts that are off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.still_on">
        <source>Is everything still on?</source>
        <extracomment>Asked once when the person is back in bed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.up_confirm">
        <source>Up for the day?</source>
        <extracomment>Asked before the night ends.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.title">
        <source>What should I do?</source>
        <extracomment>Heading of the help at night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.off">
        <source>Something came off</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.light">
        <source>The light looks wrong</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.light.advice">
        <source>Push each plug in once more and look again. Still wrong? Call the number below, or keep the kit on and sleep.</source>
        <extracomment>Advice at night, after the choice before this one. The clinic&apos;s number for the time when it is closed stands below.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.skin">
        <source>My skin itches or hurts</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.skin.advice">
        <source>Take that tape or part off slowly and leave it off. If your face swells or you cannot breathe well, call %1.</source>
        <extracomment>Advice at night, after the choice before this one. The clinic&apos;s number for the time when it is closed stands below. %1 is the local emergency number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.unwell">
        <source>I feel ill</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.unwell.advice">
        <source>Nobody is watching. Chest pain, severe trouble breathing or fainting: take the kit off and call %1 now.</source>
        <extracomment>Advice at night after &quot;I feel ill&quot;. %1 is the local emergency number, which also stands below.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.stop">
        <source>I want to stop</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.help.stop.advice">
        <source>You can stop at any time. Take tape off slowly, then the rest. Call your clinic in the morning. If you are very ill, call %1.</source>
        <extracomment>Advice at night, after the choice before this one. The clinic&apos;s number for the time when it is closed stands below. %1 is the local emergency number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.effort_belt">
        <source>Put the belt back. Breathe out and close it. 2 fingers should fit under it.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.effort_sensor">
        <source>Press the sensor on to the belt until both sides snap.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.recorder">
        <source>Fasten the recorder where it was. Push in any plug that is loose.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.nasal_cannula">
        <source>Put the prongs in your nose and the tube over your ears. Slide the ring under your chin, loose enough to swallow.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.breath_sensor">
        <source>Push it back to the middle of the nose tube. Its tips touch no skin.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.finger_probe">
        <source>Hold your nail side up and push the same finger all the way in.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.ecg_electrodes">
        <source>Dry the skin. Press the pad back on for 10 seconds.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.body_position_sensor">
        <source>Fasten it in the middle of the chest belt, with the arrow to your head.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.snore_microphone">
        <source>Put it back on the side of your neck. Press the tape down. Keep the cable off your neck.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.refit.leg_electrodes">
        <source>Dry the skin. Press the pads and the tape back on for 10 seconds.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.look_light">
        <source>Now look at the recorder&apos;s light. Does it show that it is recording? If not, push each plug in once more.</source>
        <extracomment>Night: after a part was put back on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="morning.title">
        <source>Good morning</source>
        <extracomment>Title of the first page in the morning.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="morning.body">
        <source>Leave the kit on for now. First come some short questions. Then you take it off, step by step.</source>
        <extracomment>Under that title: the kit stays on until the questions are done.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.into_bed.title">
        <source>When did you get into bed?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.into_bed.short">
        <source>Into bed</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.lights_out.title">
        <source>When did you put the light out to sleep?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.lights_out.short">
        <source>Lights out</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.asleep_after.title">
        <source>How long after lights out did you sleep?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.asleep_after.short">
        <source>Time to fall asleep</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.awake.title">
        <source>Were you awake in the night?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.awake.short">
        <source>Awake at night</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.off.title">
        <source>Did any part come off in the night?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.off.short">
        <source>Parts that came off</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.final_waking.title">
        <source>When was your final waking this morning?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.final_waking.short">
        <source>Final waking</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.lights_on.title">
        <source>When did you stop trying to sleep?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters. This is the time when the person turned the light on or gave up on more sleep.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.lights_on.short">
        <source>Lights on</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.out_of_bed.title">
        <source>When did you get up for the day?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.out_of_bed.short">
        <source>Up for the day</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.compare.title">
        <source>How was it next to your usual nights?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.compare.short">
        <source>Next to usual nights</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.comment.title">
        <source>What else should your clinic know?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.comment.short">
        <source>Your comment</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.hint.notes">
        <source>Your night notes say %1.</source>
        <extracomment>Under a question. %1 is a time from what was tapped at night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.hint.none">
        <source>We have no note of this.</source>
        <extracomment>Under a question: nothing was tapped about it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.hint.forgot_back">
        <source>You noted getting up at %1, but not coming back to bed. When was that?</source>
        <extracomment>Under the question about being awake. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.compare.better">
        <source>Better than usual</source>
        <extracomment>Answer about this night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.compare.usual">
        <source>Like a usual night</source>
        <extracomment>Answer about this night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.compare.worse">
        <source>Worse than usual</source>
        <extracomment>Answer about this night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.progress">
        <source>Question %1 of %2</source>
        <extracomment>Small line over a question. %1 is its number, %2 how many there are.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.none_awake">
        <source>No, I slept through</source>
        <extracomment>Answer to &quot;Were you awake in the night?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.none_off">
        <source>Nothing came off</source>
        <extracomment>Answer to &quot;Did any part come off in the night?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.exact">
        <source>%1</source>
        <extracomment>An answer in the list of answers. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.about">
        <source>About %1, give or take %2 min</source>
        <extracomment>An answer in the list of answers. %1 is a time, %2 a number of minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.between">
        <source>Between %1 and %2</source>
        <extracomment>An answer in the list of answers. %1 and %2 are times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.minutes">
        <source>%1 min</source>
        <extracomment>An answer in the list of answers. %1 is a number of minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.skipped">
        <source>Skipped</source>
        <extracomment>In the list of answers: the question was skipped.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.unsure">
        <source>Not sure</source>
        <extracomment>In the list of answers: the person does not know.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.none">
        <source>None</source>
        <extracomment>In the list of answers: there is nothing to tell.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.awake_from_to">
        <source>Awake %1 to %2</source>
        <extracomment>A time awake. %1 and %2 are times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.awake_from">
        <source>Awake from %1, about %2 min</source>
        <extracomment>A time awake. %1 is a time, %2 a number of minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.off_from_to">
        <source>%1: off %2 to %3</source>
        <extracomment>A part that came off. %1 is the part, %2 and %3 are times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.off_from">
        <source>%1: off from %2</source>
        <extracomment>A part that came off and stayed off. %1 is the part, %2 a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.off_soon">
        <source>%1: off since some time between %2 and %3</source>
        <extracomment>A part that came off, nobody knows when. %1 is the part, %2 and %3 are times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="day.evening">
        <source>%1 evening</source>
        <extracomment>Beside a time, to tell which one is meant. %1 is a day of the week.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="day.night">
        <source>%1, after midnight</source>
        <extracomment>Beside a time from midnight to 5 AM. %1 is the day of the week that begins at that midnight.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="day.morning">
        <source>%1 morning</source>
        <extracomment>Beside a time, to tell which one is meant. %1 is a day of the week.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="day.afternoon">
        <source>%1 afternoon</source>
        <extracomment>Beside a time, to tell which one is meant. %1 is a day of the week.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="review.title">
        <source>Check your answers</source>
        <extracomment>Title of the list of all answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="review.body">
        <source>Change what is not right. It is fine to leave answers out.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="review.main">
        <source>My answers are right</source>
        <extracomment>Large button: the answers are right.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.title">
        <source>2 answers do not fit together</source>
        <extracomment>Title of a page that shows 2 answers side by side. Kind, no blame.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.lights_on_before_lights_out">
        <source>Lights on would come before lights out. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.outside_night">
        <source>This would be before or after your night. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.longer_than_bed">
        <source>The times asleep and awake add up to more than the time in bed. Which should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.too_long">
        <source>The night would be longer than 24 hours. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.order">
        <source>These times are the wrong way around: %1, %2. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both. %1 and %2 are names of questions, such as &quot;Into bed&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.sentence.enough">
        <source>From your notes, this looks like a long enough night. You can pack the kit.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.sentence.borderline">
        <source>From your notes, this night may be long enough. Pack the kit, and your clinic will look.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.sentence.short">
        <source>From your notes, this looks like a short night. Pack the kit and ask your clinic what comes next.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.sentence.unknown">
        <source>Your notes do not show how long the night was. Pack the kit, and your clinic will look.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.range">
        <source>Hours with the needed sensors in place: about %1 to %2</source>
        <extracomment>Under that sentence. %1 and %2 are numbers of hours, such as &quot;5&quot; and &quot;6 and a half&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.range_one">
        <source>Hours with the needed sensors in place: about %1</source>
        <extracomment>Under that sentence. %1 is a number of hours, such as &quot;6 and a half&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.under_one">
        <source>Hours with the needed sensors in place: less than 1</source>
        <extracomment>Under that sentence.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.half">
        <source>%1 and a half</source>
        <extracomment>A number of hours and a half. %1 is the whole number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.explain">
        <source>Where a bar fades, the time is not sure.</source>
        <extracomment>Under the picture of the night, in which some bars fade at their ends.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.gaps">
        <source>Short gaps are common and no one&apos;s fault.</source>
        <extracomment>After that sentence.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.clinic">
        <source>Your clinic decides from the recording. Questions? Call %1.</source>
        <extracomment>Near the result. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.lane.sleep">
        <source>Asleep</source>
        <extracomment>Name of the row for sleep in the picture of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.clock_back">
        <source>Clocks go back</source>
        <extracomment>Mark in the picture of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.clock_forward">
        <source>Clocks go forward</source>
        <extracomment>Mark in the picture of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="result.main">
        <source>Stop the recorder and take off the kit</source>
        <extracomment>Large button: the next pages say how to stop the recorder and take the kit off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.stop.switch">
        <source>Turn the recorder off</source>
        <extracomment>Title of a page: the recorder is stopped with its switch.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.stop.switch.body">
        <source>Slide the switch back until it stops. The recording ends now.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.stop.last_plug">
        <source>Stop the recorder</source>
        <extracomment>Title of a page: the recorder stops when the last plug is pulled.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.stop.last_plug.body">
        <source>Pull the plug of the finger clip out of the recorder. The recording ends now.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.stop.set_time">
        <source>The recorder stops by itself</source>
        <extracomment>Title of a page: the recorder stops without being touched.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.stop.set_time.body">
        <source>You do not have to press anything. Go on and take off the kit.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.tape.title">
        <source>Take off the tape slowly</source>
        <extracomment>Title of a page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.tape.body">
        <source>Fold the strip back along your skin. Pull it low and slow. Hold the skin with your other hand.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.tape.caution">
        <source>Do not tear it off: that can hurt your skin. If it sticks hard, wet it with warm water first.</source>
        <extracomment>Caution on that page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.rest.title">
        <source>Take off the rest of the kit</source>
        <extracomment>Title of a page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.rest.body">
        <source>Take off the sensors, then the belts and the recorder.</source>
        <oldsource>Take off the sensors, then the belts and the recorder. Pull on the plugs, not on the cables.</oldsource>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.title">
        <source>Look at your skin</source>
        <extracomment>Title of a page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.body">
        <source>Look at each spot where tape or a pad was. Look for red skin, a blister or a tear.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.again">
        <source>Look once more in 30 minutes.</source>
        <extracomment>On the same page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.hurt.advice">
        <source>Do not rub or cover the spot. Is it still red, torn or blistered after 30 minutes? Call your clinic: %1.</source>
        <extracomment>On the same page, when the person said that the skin is red or hurts. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="pack.title">
        <source>Pack the kit</source>
        <extracomment>Title of the list of what goes back.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="pack.body">
        <source>Put each part in the bag. Tap it when it is in.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="pack.main">
        <source>Everything is packed</source>
        <extracomment>Large button: everything is in the bag.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.title">
        <source>Thank you. You are done.</source>
        <extracomment>Title of the last page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.body">
        <source>Your diary is saved.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.record">
        <source>Saved as %1</source>
        <extracomment>On the last page, small. %1 is the name of the saved record.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.return">
        <source>Bring the kit back by %1.</source>
        <extracomment>On the last page. %1 is a date.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.no_record">
        <source>Your notes are safe, but the record could not be written: %1</source>
        <extracomment>On the last page, when the record could not be written. %1 is the reason.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.keep">
        <source>Bring the tablet back too. Leave it as it is: your diary is on it.</source>
        <extracomment>On the last page, about the tablet.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.disk_full.title">
        <source>The tablet is full</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.disk_full.body">
        <source>All your notes so far are safe. New ones cannot be saved. Keep the kit on, write your times on paper and call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.read_only.title">
        <source>The tablet cannot save notes</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.read_only.body">
        <source>All your notes so far are safe. Keep the kit on, write your times on paper and call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.second_copy.title">
        <source>This page is open twice</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.second_copy.body">
        <source>Nothing is lost. Close the other one, then try again. If that does not help, call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.damaged.title">
        <source>Some notes could not be read</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.damaged.body">
        <source>What could be read is kept, and nothing was deleted. You can go on. Please tell your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.sync.title">
        <source>Your last note may not be saved</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.sync.body">
        <source>All notes before it are safe. Try again. If it comes back, write your times on paper and call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.charger.1.question">
        <source>The tablet is not charging.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: the tablet goes on its charger.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.charger.1.fix">
        <source>Press both ends of the cable in well. Then try another wall outlet.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.clothes.1.question">
        <source>I do not sleep in clothes.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: what to wear.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.clothes.1.fix">
        <source>Put on a thin T-shirt for tonight. The belts can rub on bare skin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.bathroom.1.question">
        <source>I often have to go at night.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.bathroom.1.fix">
        <source>You can get up at any time with the kit on. Free the cables first, then walk.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.bare.1.question">
        <source>A ring does not come off.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.bare.1.fix">
        <source>Leave it on if it is not tight. The clip needs only the tip of your finger.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.bare.2.question">
        <source>I have gel or false nails.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.bare.2.fix">
        <source>Use a finger with a bare nail on the same hand. If no nail is bare, call your clinic first.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.tape.1.question">
        <source>I do not know how long 5 cm is.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.tape.1.fix">
        <source>5 cm is 2 inches. A little more or less is fine.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.tape.2.question">
        <source>There is not enough tape.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ready.tape.2.fix">
        <source>Use medical tape for skin if you have some at home. Do not use any other tape.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.chest.wrap.1.question">
        <source>The belt slips down.</source>
        <extracomment>A fault as the person would say it. On the page: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.chest.wrap.1.fix">
        <source>Open it and move it up, close to your armpits. Breathe out and close it a little tighter.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.chest.wrap.2.question">
        <source>The belt feels too tight.</source>
        <extracomment>A fault as the person would say it. On the page: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.chest.wrap.2.fix">
        <source>Open it and make it longer. You should breathe with ease, and 2 fingers should fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.chest.wrap.3.question">
        <source>The belt does not reach around me.</source>
        <extracomment>A fault as the person would say it. On the page: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.chest.wrap.3.fix">
        <source>Make it as long as it goes. If it still does not reach, leave it off and call your clinic.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.1.question">
        <source>The belt slips or rolls up.</source>
        <extracomment>A fault as the person would say it. On the page: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.1.fix">
        <source>Open it, smooth it flat and put it back over your navel. Breathe out and close it a little tighter.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.2.question">
        <source>The belt feels too tight.</source>
        <extracomment>A fault as the person would say it. On the page: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.2.fix">
        <source>Open it and make it longer. You should breathe with ease, and 2 fingers should fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.3.question">
        <source>The belt does not reach around me.</source>
        <extracomment>A fault as the person would say it. On the page: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.3.fix">
        <source>Make it as long as it goes. If it still does not reach, leave it off and call your clinic.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_sensor.snap.1.question">
        <source>It does not snap on.</source>
        <extracomment>A fault as the person would say it. On the page: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_sensor.snap.1.fix">
        <source>Put 1 hand behind the belt and press with the other. If it still does not snap, turn the sensor around.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_sensor.snap.2.question">
        <source>It comes off again.</source>
        <extracomment>A fault as the person would say it. On the page: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.effort_sensor.snap.2.fix">
        <source>See that no cloth is caught under the sensor. Then press each side until it snaps.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.hip.wear.1.question">
        <source>I like to sleep on that side.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.hip.wear.1.fix">
        <source>Put it on your other side. See that all cables still reach.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.hip.wear.2.question">
        <source>It slides along the belt.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.hip.wear.2.fix">
        <source>Close the waist belt a little tighter. 2 fingers should still fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.chest.wear.1.question">
        <source>It presses on my chest.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the front of the chest strap.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.chest.wear.1.fix">
        <source>Smooth your shirt under it. Then make the strap a little longer.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.chest.wear.2.question">
        <source>It does not stay in the middle.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the front of the chest strap.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.chest.wear.2.fix">
        <source>See that both sides are fastened. Then close the strap a little tighter.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.harness.wear.1.question">
        <source>I do not know which way it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.harness.wear.1.fix">
        <source>Hold it up with the recorder facing away from you. The 2 long straps go over your shoulders.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.harness.wear.2.question">
        <source>The straps slip or rub.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.recorder.harness.wear.2.fix">
        <source>Make them shorter if they slip, and longer if they rub. Keep them off your neck.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.1.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.1.fix">
        <source>Do not force it. Feel the mark again. Then turn the plug a little and try once more.</source>
        <oldsource>Do not force it. Count the ridges again. Then turn the plug a little and try once more.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.2.question">
        <source>I cannot find the right port.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.2.fix">
        <source>Run your thumb along the recorder. Each port is an opening with its mark beside it.</source>
        <oldsource>Run your thumb along the recorder. Each port is an opening with its ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.smooth.1.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.smooth.1.fix">
        <source>Do not force it. Feel again for the smooth port. Then turn the plug a little and try once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.smooth.2.question">
        <source>I cannot find the smooth port.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.push.smooth.2.fix">
        <source>Run your thumb along the recorder. The smooth port is the opening with no mark beside it.</source>
        <oldsource>Run your thumb along the recorder. The smooth port is the opening with no ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.1.question">
        <source>The plug does not turn.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.1.fix">
        <source>Take it out. Feel the mark again. Push it in all the way, then turn it clockwise.</source>
        <oldsource>Take it out. Count the ridges again. Push it in all the way, then turn it clockwise.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.2.question">
        <source>I cannot find the right port.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.2.fix">
        <source>Run your thumb along the recorder. Each port is an opening with its mark beside it.</source>
        <oldsource>Run your thumb along the recorder. Each port is an opening with its ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.smooth.1.question">
        <source>The plug does not turn.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.smooth.1.fix">
        <source>Take it out. Feel again for the smooth port. Push it in all the way, then turn it clockwise.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.smooth.2.question">
        <source>I cannot find the smooth port.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.twist.smooth.2.fix">
        <source>Run your thumb along the recorder. The smooth port is the opening with no mark beside it.</source>
        <oldsource>Run your thumb along the recorder. The smooth port is the opening with no ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.1.question">
        <source>The plug does not snap in.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.1.fix">
        <source>Do not force it. Feel the mark again. Then turn the plug a little and press once more.</source>
        <oldsource>Do not force it. Count the ridges again. Then turn the plug a little and press once more.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.2.question">
        <source>I cannot find the right port.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.2.fix">
        <source>Run your thumb along the recorder. Each port is an opening with its mark beside it.</source>
        <oldsource>Run your thumb along the recorder. Each port is an opening with its ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.smooth.1.question">
        <source>The plug does not snap in.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.smooth.1.fix">
        <source>Do not force it. Feel again for the smooth port. Then turn the plug a little and press once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.smooth.2.question">
        <source>I cannot find the smooth port.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.plug.snap.smooth.2.fix">
        <source>Run your thumb along the recorder. The smooth port is the opening with no mark beside it.</source>
        <oldsource>Run your thumb along the recorder. The smooth port is the opening with no ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.prongs.1.question">
        <source>The prongs tickle or hurt.</source>
        <extracomment>A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.prongs.1.fix">
        <source>Pull them out a little. They sit just inside the nose.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.prongs.2.question">
        <source>The prongs slip out.</source>
        <extracomment>A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.prongs.2.fix">
        <source>Hold them for now. They stay in once the tube is over your ears and under your chin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.prongs.3.question">
        <source>My nose is blocked.</source>
        <extracomment>A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.prongs.3.fix">
        <source>Blow your nose gently and go on. If no air gets through, call your clinic. Do not take anything new for it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.ears.1.question">
        <source>It hurts behind my ears.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is laid over both ears.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.ears.1.fix">
        <source>Let the tube out a little. You can put a bit of soft cloth under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.ears.2.question">
        <source>It slips off my ears.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is laid over both ears.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.ears.2.fix">
        <source>Take your glasses off. Hook the tube over again. On the next page you make it snug.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.chin.1.question">
        <source>It feels tight when I swallow.</source>
        <extracomment>A fault as the person would say it. On the page: the small ring on the tube is slid up under the chin.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.chin.1.fix">
        <source>Slide the ring down a little. Swallow again to test it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.chin.2.question">
        <source>The ring slides down.</source>
        <extracomment>A fault as the person would say it. On the page: the small ring on the tube is slid up under the chin.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.chin.2.fix">
        <source>Hold both tubes with 1 hand and slide the ring up with the other. Turn your head to test it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.tape.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is taped to both cheeks.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.tape.1.fix">
        <source>Dry your cheek and wipe off any cream. Then use a new strip.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.tape.2.question">
        <source>I have a beard.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is taped to both cheeks.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.tape.2.fix">
        <source>Put the strip on bare skin above the beard.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.push.1.question">
        <source>The tube slides off.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.push.1.fix">
        <source>Wipe both ends dry. Then push the tube on with a small turn, as far as it goes.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.push.2.question">
        <source>I cannot find where it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.push.2.fix">
        <source>Look for a short round nozzle that is open in the middle. The tube fits only there.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.twist.1.question">
        <source>The tube does not turn.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.twist.1.fix">
        <source>Take it off and set it on straight. Then turn it clockwise, the way the hands of a clock move.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.twist.2.question">
        <source>I cannot find where it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.twist.2.fix">
        <source>Look for a short round nozzle that is open in the middle. The tube fits only there.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.snap.1.question">
        <source>The tube does not snap on.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.snap.1.fix">
        <source>Take it off and set it on straight. Then press it until it snaps. Do not force it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.snap.2.question">
        <source>I cannot find where it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.nasal_cannula.join.snap.2.fix">
        <source>Look for a short round nozzle that is open in the middle. The tube fits only there.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.breath_sensor.place.1.question">
        <source>It touches my lip or nose.</source>
        <extracomment>A fault as the person would say it. On the page: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.breath_sensor.place.1.fix">
        <source>Bend the soft tips a little, away from your skin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.breath_sensor.place.2.question">
        <source>It does not stay in place.</source>
        <extracomment>A fault as the person would say it. On the page: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.breath_sensor.place.2.fix">
        <source>Push it back to the middle of the nose tube and press it on.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.left.1.question">
        <source>My left hand is cold.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.left.1.fix">
        <source>Hold it in warm water or rub it. Dry it well, then put the clip on.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.left.2.question">
        <source>The clip hurts or feels tight.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.left.2.fix">
        <source>Take it off and put it on again, straight. If it still hurts, use the middle finger of your left hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.left.3.question">
        <source>The clip slides off.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.left.3.fix">
        <source>Dry your finger and push it all the way in. Lay the cable flat on the back of your left hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.1.question">
        <source>I cannot do it with 1 hand.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.1.fix">
        <source>Rest your left hand on a table. Stick down 1 end of the strip, then smooth the rest over the cable.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.2.question">
        <source>The cable pulls on the clip.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.2.fix">
        <source>Lift the strip slowly. Make a fist, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.1.fix">
        <source>Dry the skin and wipe off any cream. Use a new strip where there is little hair.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.2.fix">
        <source>Lift the strip slowly. Bend your arm, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.left.1.question">
        <source>The cable does not reach.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.left.1.fix">
        <source>Bend your left arm. If it still does not reach, tape the cable again with less slack.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.left.2.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.left.2.fix">
        <source>Do not force it. See that it is the right port. Then turn the plug a little and try once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.right.1.question">
        <source>My right hand is cold.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.right.1.fix">
        <source>Hold it in warm water or rub it. Dry it well, then put the clip on.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.right.2.question">
        <source>The clip hurts or feels tight.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.right.2.fix">
        <source>Take it off and put it on again, straight. If it still hurts, use the middle finger of your right hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.right.3.question">
        <source>The clip slides off.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.place.right.3.fix">
        <source>Dry your finger and push it all the way in. Lay the cable flat on the back of your right hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.1.question">
        <source>I cannot do it with 1 hand.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.1.fix">
        <source>Rest your right hand on a table. Stick down 1 end of the strip, then smooth the rest over the cable.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.2.question">
        <source>The cable pulls on the clip.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.2.fix">
        <source>Lift the strip slowly. Make a fist, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.1.fix">
        <source>Dry the skin and wipe off any cream. Use a new strip where there is little hair.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.2.fix">
        <source>Lift the strip slowly. Bend your arm, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.right.1.question">
        <source>The cable does not reach.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.right.1.fix">
        <source>Bend your right arm. If it still does not reach, tape the cable again with less slack.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.right.2.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.finger_probe.plug.right.2.fix">
        <source>Do not force it. See that it is the right port. Then turn the plug a little and try once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ecg_electrodes.place.1.question">
        <source>A pad does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ecg_electrodes.place.1.fix">
        <source>Dry the skin and wipe off any cream. Press down the edge of the pad for 10 seconds.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ecg_electrodes.place.2.question">
        <source>I have hair there.</source>
        <extracomment>A fault as the person would say it. On the page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.ecg_electrodes.place.2.fix">
        <source>Move the pad a little, to a spot with less hair. Press it down well.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.body_position_sensor.place.1.question">
        <source>The arrow points the wrong way.</source>
        <extracomment>A fault as the person would say it. On the page: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.body_position_sensor.place.1.fix">
        <source>Take the sensor off. Turn it so that the arrow points to your head, and put it back.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.body_position_sensor.place.2.question">
        <source>It slides to the side.</source>
        <extracomment>A fault as the person would say it. On the page: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.body_position_sensor.place.2.fix">
        <source>Move it back to the middle. Close the chest belt a little tighter. 2 fingers should still fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.snore_microphone.place.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.snore_microphone.place.1.fix">
        <source>Dry the skin and wipe off any cream. If you have a beard, go a little lower, to bare skin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.snore_microphone.place.2.question">
        <source>It bothers me when I swallow.</source>
        <extracomment>A fault as the person would say it. On the page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.snore_microphone.place.2.fix">
        <source>Move it a little more to the side of your neck.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.1.question">
        <source>A pad does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.1.fix">
        <source>Dry the skin and wipe off any cream. Pick a spot with little hair and press for 10 seconds.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.2.fix">
        <source>Lift the strip slowly. Bend your knee, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.1.question">
        <source>A pad does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.1.fix">
        <source>Dry the skin and wipe off any cream. Pick a spot with little hair and press for 10 seconds.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.2.fix">
        <source>Lift the strip slowly. Bend your knee, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.switch.1.question">
        <source>The switch does not move.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder is started with a sliding switch.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.switch.1.fix">
        <source>Slide it, do not press it. Use your thumb and follow the arrow in the picture.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.switch.2.question">
        <source>Nothing happens.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder is started with a sliding switch.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.switch.2.fix">
        <source>Slide it back. Wait 10 seconds and slide it again. Then go on and look at the light.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.set_time.1.question">
        <source>I want to sleep before that time.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder starts by itself at a set time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.set_time.1.fix">
        <source>You can. Keep the kit on. The recorder starts while you sleep.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.set_time.2.question">
        <source>I am late. Has it started yet?</source>
        <extracomment>A fault as the person would say it. On the page: the recorder starts by itself at a set time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="help.start.set_time.2.fix">
        <source>Go on and look at the light. It shows if the recorder is recording.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.label">
        <source>Now: %1</source>
        <extracomment>Small line over the title of a step. %1 is the name of a part, such as &quot;chest belt&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.effort_belt.chest">
        <source>chest belt</source>
        <extracomment>Name of a part of the kit (respiratory effort belt, chest), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.effort_belt.abdomen">
        <source>waist belt</source>
        <extracomment>Name of a part of the kit (respiratory effort belt, abdomen), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.effort_sensor.chest">
        <source>chest sensor</source>
        <extracomment>Name of a part of the kit (effort sensor on the chest belt), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.effort_sensor.abdomen">
        <source>waist sensor</source>
        <extracomment>Name of a part of the kit (effort sensor on the waist belt), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.recorder">
        <source>recorder</source>
        <extracomment>Name of a part of the kit (the small box that records), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.nasal_cannula">
        <source>nose tube</source>
        <extracomment>Name of a part of the kit (nasal cannula), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.breath_sensor">
        <source>breath sensor</source>
        <extracomment>Name of a part of the kit (thermal airflow sensor), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.finger_probe">
        <source>finger clip</source>
        <extracomment>Name of a part of the kit (finger probe of the pulse oximeter), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.ecg_electrodes">
        <source>heart pads</source>
        <extracomment>Name of a part of the kit (ECG electrodes), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.body_position_sensor">
        <source>position sensor</source>
        <extracomment>Name of a part of the kit (body position sensor), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.snore_microphone">
        <source>snore sensor</source>
        <extracomment>Name of a part of the kit (snore microphone), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.leg_electrodes.left_leg">
        <source>left leg pads</source>
        <extracomment>Name of a part of the kit (EMG electrodes, left leg), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.leg_electrodes.right_leg">
        <source>right leg pads</source>
        <extracomment>Name of a part of the kit (EMG electrodes, right leg), lower case, the same everywhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.charger.title">
        <source>Put the tablet on its charger</source>
        <extracomment>Title of the page: getting ready: the tablet goes on its charger. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.charger.body">
        <source>Plug in the charger beside your bed. Leave the tablet on it all night.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: the tablet goes on its charger.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.charger.right">
        <source>The tablet shows that it is charging.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: the tablet goes on its charger.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.charger.why">
        <source>The tablet keeps your notes all night. On its charger it will not run out of power.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: the tablet goes on its charger.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.clothes.title">
        <source>Put on loose nightwear</source>
        <extracomment>Title of the page: getting ready: what to wear. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.clothes.body">
        <source>Wear what you like to sleep in, as long as it is loose. The kit goes over your clothes.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: what to wear.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.clothes.right">
        <source>You can raise both arms, and nothing is tight.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: what to wear.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.clothes.why">
        <source>Tight clothes can shift the belts when you turn over. A thin layer of cloth also protects your skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: what to wear.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bathroom.title">
        <source>Go to the bathroom now</source>
        <extracomment>Title of the page: getting ready: the bathroom, before anything is connected. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bathroom.body">
        <source>Go before the kit is on. Wash your hands and face, and dry them well.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bathroom.right">
        <source>Your face and hands are clean and dry, with no cream on them.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bathroom.why">
        <source>Getting up is harder with the kit on. Tape holds best on clean, dry skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bare.title">
        <source>Take off rings, watch and nail polish</source>
        <extracomment>Title of the page: getting ready: rings, watch and nail polish come off. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bare.body">
        <source>Take off necklaces too. Polish must be off the index finger of the hand you do not write with.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bare.right">
        <source>Your hands and neck are bare, and so is that nail.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.bare.why">
        <source>The finger clip shines a light through your nail. Polish can block it. Rings and chains can catch on the cables.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.tape.title">
        <source>Tape strips to tear off: %1 (%2 cm each)</source>
        <extracomment>Title of the page: getting ready: strips of tape are torn off before they are needed. Next to a picture of it. At most 45 characters. %1 is the number of strips, %2 the length of each in cm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.tape.body">
        <source>Tear off this many strips: %1. Make each about %2 cm long. Hang them by one end on the edge of a table.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: strips of tape are torn off before they are needed. %1 is the number of strips, %2 the length of each in cm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.tape.right">
        <source>All strips hang ready, and you can reach them with ease.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.tape.why">
        <source>Later on you have only 1 free hand. It helps when the strips are ready.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ready.tape.caution">
        <source>Does tape make your skin itch, sore or red? Do not use it. Call your clinic first. Never put tape on sore or broken skin.</source>
        <extracomment>Caution in a box on this page: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.chest.wrap.title">
        <source>Close the belt around your chest</source>
        <extracomment>Title of the page: the chest belt is closed round the chest, at the end of a breath out. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.chest.wrap.body">
        <source>Put it under your armpits. Close it at the end of a slow breath out.</source>
        <oldsource>Put it under your armpits. Breathe out slowly. At the end of the breath, close the belt.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.chest.wrap.right">
        <source>It lies flat, 2 fingers fit under it, and it stays put.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.chest.wrap.why">
        <source>This belt feels your chest move as you breathe. If it is loose, it slips. If it is tight, it is hard to breathe.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.title">
        <source>Close the belt over your navel</source>
        <extracomment>Title of the page: the waist belt is closed round the waist, over the navel, at the end of a breath out. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.body">
        <source>Put it around your waist. Close it at the end of a slow breath out.</source>
        <oldsource>Put it around your waist. Breathe out slowly. At the end of the breath, close the belt.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.right">
        <source>It lies flat, 2 fingers fit under it, and it stays put.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.why">
        <source>This belt feels your belly move as you breathe. If it is loose, it slips. If it is tight, it is hard to breathe.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_sensor.snap.title">
        <source>Snap the sensor on to its belt</source>
        <extracomment>Title of the page: a sensor is pressed on to the 2 studs of a belt (the label names which sensor). Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_sensor.snap.body">
        <source>Hold it in front of the 2 studs on the belt. Press each side until it snaps.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_sensor.snap.right">
        <source>You felt it snap, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.effort_sensor.snap.why">
        <source>The sensor feels how the belt stretches. If it is loose, it misses your breath.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.hip.wear.title">
        <source>Put the recorder on your waist belt</source>
        <extracomment>Title of the page: the recorder goes on the waist belt, at the side of the hip. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.hip.wear.body">
        <source>Fasten it to the waist belt at your side, over the hip. The side with the ports (the openings for plugs) points up.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.hip.wear.right">
        <source>It sits at your side and does not swing.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.hip.wear.why">
        <source>The recorder saves what the sensors feel. At your side it is least in your way.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.chest.wear.title">
        <source>Put the recorder on your chest strap</source>
        <extracomment>Title of the page: the recorder goes on the front of the chest strap. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.chest.wear.body">
        <source>Fasten it in front, beside the buckle. The side with the ports (the openings for plugs) points up.</source>
        <oldsource>Fasten it in front, in the middle of your chest. The side with the ports (the openings for plugs) points up.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder goes on the front of the chest strap.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.chest.wear.right">
        <source>It hangs in front and lies flat.</source>
        <oldsource>It hangs in the middle and lies flat.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder goes on the front of the chest strap.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.chest.wear.why">
        <source>The recorder saves what the sensors feel. On your chest it is close to them, so no cable has to pull.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder goes on the front of the chest strap.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.harness.wear.title">
        <source>Put the harness on like a vest</source>
        <extracomment>Title of the page: the recorder sits in a harness of straps that is put on like a vest. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.harness.wear.body">
        <source>Put 1 arm through, then the other. Close the strap in front. The recorder sits in the middle of your chest.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.harness.wear.right">
        <source>The recorder sits in the middle, and no strap rubs your neck.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.recorder.harness.wear.why">
        <source>The harness holds the recorder still when you turn over in bed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.title">
        <source>Find the port with %1</source>
        <oldsource>Match the ridges: %1</oldsource>
        <extracomment>Title of the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in). Next to a picture of it. At most 45 characters. %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.body">
        <source>Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Push the plug straight in.</source>
        <oldsource>Feel the ridges on the plug: %1. Find the port on the recorder with just as many. Push the plug straight in.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder that has the same mark (the plug is pushed in). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.right">
        <source>It is in all the way. Plug and port both have %1.</source>
        <oldsource>It is in all the way. Ridges on plug and port: %1.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.why">
        <source>Each plug has its own port. You can feel its mark with your thumb, even in the dark.</source>
        <oldsource>Each plug has its own port. You can feel the ridges with your thumb, even in the dark.</oldsource>
        <extracomment>Answer to &quot;Why this?&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.smooth.title">
        <source>Push the smooth plug in</source>
        <extracomment>Title of the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in). Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.smooth.body">
        <source>This plug is smooth: it has no mark. Find the smooth port on the recorder. Push the plug straight in.</source>
        <oldsource>This plug has no ridges. Find the port on the recorder that has none. Push the plug straight in.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.smooth.right">
        <source>It is in all the way. Plug and port are both smooth.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.push.smooth.why">
        <source>Each plug has its own port. This one is smooth, so you can feel it even in the dark.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.title">
        <source>Find the port with %1</source>
        <oldsource>Match the ridges: %1</oldsource>
        <extracomment>Title of the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise). Next to a picture of it. At most 45 characters. %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.body">
        <source>Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Push the plug in and turn it clockwise until it stops.</source>
        <oldsource>Feel the ridges on the plug: %1. Find the port on the recorder with just as many. Push the plug in and turn it clockwise until it stops.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.right">
        <source>It turns no further. Plug and port both have %1.</source>
        <oldsource>It turns no further. Ridges on plug and port: %1.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.why">
        <source>Each plug has its own port. You can feel its mark with your thumb, even in the dark.</source>
        <oldsource>Each plug has its own port. You can feel the ridges with your thumb, even in the dark.</oldsource>
        <extracomment>Answer to &quot;Why this?&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.smooth.title">
        <source>Turn the smooth plug in</source>
        <extracomment>Title of the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise). Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.smooth.body">
        <source>This plug is smooth: it has no mark. Find the smooth port on the recorder. Push the plug in and turn it clockwise until it stops.</source>
        <oldsource>This plug has no ridges. Find the port on the recorder that has none. Push the plug in and turn it clockwise until it stops.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.smooth.right">
        <source>It turns no further. Plug and port are both smooth.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.twist.smooth.why">
        <source>Each plug has its own port. This one is smooth, so you can feel it even in the dark.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.title">
        <source>Find the port with %1</source>
        <oldsource>Match the ridges: %1</oldsource>
        <extracomment>Title of the page: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps). Next to a picture of it. At most 45 characters. %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.body">
        <source>Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Press the plug until it snaps.</source>
        <oldsource>Feel the ridges on the plug: %1. Find the port on the recorder with just as many. Press the plug until it snaps.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.right">
        <source>You felt it snap. Plug and port both have %1.</source>
        <oldsource>You felt it snap. Ridges on plug and port: %1.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.why">
        <source>Each plug has its own port. You can feel its mark with your thumb, even in the dark.</source>
        <oldsource>Each plug has its own port. You can feel the ridges with your thumb, even in the dark.</oldsource>
        <extracomment>Answer to &quot;Why this?&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.smooth.title">
        <source>Snap the smooth plug in</source>
        <extracomment>Title of the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps). Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.smooth.body">
        <source>This plug is smooth: it has no mark. Find the smooth port on the recorder. Press the plug until it snaps.</source>
        <oldsource>This plug has no ridges. Find the port on the recorder that has none. Press the plug until it snaps.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.smooth.right">
        <source>You felt it snap. Plug and port are both smooth.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.plug.snap.smooth.why">
        <source>Each plug has its own port. This one is smooth, so you can feel it even in the dark.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.prongs.title">
        <source>Put the 2 prongs in your nose</source>
        <extracomment>Title of the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.prongs.body">
        <source>Turn the soft prongs of the nose tube up, so that they curve toward you. Put 1 into each nostril.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.prongs.right">
        <source>Both prongs sit in your nose, and you breathe with ease.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.prongs.why">
        <source>The nose tube feels the air as you breathe. Of all parts it slips the most, so take your time.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.ears.title">
        <source>Put the tube over both ears</source>
        <extracomment>Title of the page: the tube is laid over both ears. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.ears.body">
        <source>Lead 1 side of the tube over each ear, from front to back. Keep the prongs in your nose.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the tube is laid over both ears.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.ears.right">
        <source>The tube lies behind both ears and does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the tube is laid over both ears.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.ears.caution">
        <source>The tube must never go around your neck. From your ears it comes down in front, under your chin.</source>
        <extracomment>Caution in a box on this page: the tube is laid over both ears.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.chin.title">
        <source>Slide the tube snug under your chin</source>
        <extracomment>Title of the page: the small ring on the tube is slid up under the chin. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.chin.body">
        <source>Slide the small ring up until it sits under your chin. Leave room to swallow.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the small ring on the tube is slid up under the chin.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.chin.right">
        <source>You can swallow and talk with ease.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the small ring on the tube is slid up under the chin.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.chin.why">
        <source>A snug tube keeps the prongs in your nose when you turn over.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the small ring on the tube is slid up under the chin.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.chin.caution">
        <source>Too tight can hurt you. Keep the tube under your chin, not around your throat, and lead it down under your clothes.</source>
        <extracomment>Caution in a box on this page: the small ring on the tube is slid up under the chin.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.tape.title">
        <source>Tape the tube to your cheeks</source>
        <extracomment>Title of the page: the tube is taped to both cheeks. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.tape.body">
        <source>Lay 1 strip across the tube on each cheek. Press it down for a few seconds.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the tube is taped to both cheeks.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.tape.right">
        <source>Both strips lie flat, and the prongs stay in when you smile.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the tube is taped to both cheeks.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.tape.why">
        <source>The tape holds the tube when your cheek rubs on the pillow.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the tube is taped to both cheeks.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.tape.caution">
        <source>Do not put tape on sore or broken skin, or if you are allergic to it. Call your clinic.</source>
        <extracomment>Caution in a box on this page: the tube is taped to both cheeks.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.push.title">
        <source>Push the tube on to the recorder</source>
        <extracomment>Title of the page: the end of the nose tube is pushed on to the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.push.body">
        <source>Find the short round nozzle on the recorder. Push the end of the tube on to it as far as it goes.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.push.right">
        <source>It sits tight, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.push.why">
        <source>Your breath is felt through this tube. If it is loose, air gets out and your breath is missed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.twist.title">
        <source>Turn the tube on to the recorder</source>
        <extracomment>Title of the page: the end of the nose tube is turned on to the recorder, clockwise. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.twist.body">
        <source>Put the end of the tube on the recorder. Turn it clockwise until it stops.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.twist.right">
        <source>It turns no further, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.twist.why">
        <source>Your breath is felt through this tube. If it is loose, air gets out and your breath is missed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.snap.title">
        <source>Snap the tube on to the recorder</source>
        <extracomment>Title of the page: the end of the nose tube is pressed on to the recorder until it snaps. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.snap.body">
        <source>Press the end of the tube on to the recorder until it snaps.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.snap.right">
        <source>You felt it snap, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.nasal_cannula.join.snap.why">
        <source>Your breath is felt through this tube. If it is loose, air gets out and your breath is missed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.breath_sensor.place.title">
        <source>Put the breath sensor under your nose</source>
        <extracomment>Title of the page: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.breath_sensor.place.body">
        <source>It sits on the nose tube, above your upper lip. Its tips point to your nose and mouth, and touch no skin.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.breath_sensor.place.right">
        <source>Its tips are in your breath, and none touches your skin.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.breath_sensor.place.why">
        <source>This sensor feels the warmth of each breath. On the skin it would feel only your skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.left.title">
        <source>Put the clip on your left index finger</source>
        <extracomment>Title of the page: the finger clip goes on the index finger of the left hand. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.left.body">
        <source>Hold your left hand nail side up. Push the index finger all the way into the clip. The cable runs along the back of your hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.left.right">
        <source>The nail is up, and your fingertip touches the end of the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.left.why">
        <source>The clip uses light to see how much oxygen is in your blood. It does not hurt. Your right hand stays free.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.left.caution">
        <source>The hand must be warm and the nail bare. Cold fingers and nail polish can spoil the reading. No clip on sore skin.</source>
        <extracomment>Caution in a box on this page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.title">
        <source>Tape the cable to your left hand</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the back of the left hand while making a fist. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.body">
        <source>Make a fist with your left hand. Press 1 strip over the cable on the back of the hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.right">
        <source>You can make a fist, and the cable does not pull on the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.why">
        <source>The fist leaves some slack in the cable. So the clip stays on when your hand moves.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.caution">
        <source>Do not put tape on sore or broken skin, or if you are allergic to it. Do not wrap tape around the hand or finger.</source>
        <extracomment>Caution in a box on this page: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.title">
        <source>Tape the cable to your left forearm</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the left forearm. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.body">
        <source>Lay the cable along your left arm. Press 1 strip over it, half way to the elbow.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.right">
        <source>You can bend your arm, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.why">
        <source>A cable that lies flat is less likely to catch on the bed or on you.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.left.title">
        <source>Plug in the finger clip last</source>
        <extracomment>Title of the page: last of all, the plug of the finger clip on the left hand goes into the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.left.body">
        <source>Sit down on your bed. With your right hand, put the plug of the clip into its port on the recorder.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.left.right">
        <source>The plug is in all the way, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.left.why">
        <source>This plug goes in last, so that both hands stay free until now.</source>
        <extracomment>Answer to &quot;Why this?&quot;: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.left.caution">
        <source>Keep the cable along your left arm, never around your neck. Leave some slack.</source>
        <extracomment>Caution in a box on this page: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.right.title">
        <source>Put the clip on your right index finger</source>
        <extracomment>Title of the page: the finger clip goes on the index finger of the right hand. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.right.body">
        <source>Hold your right hand nail side up. Push the index finger all the way into the clip. The cable runs along the back of your hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.right.right">
        <source>The nail is up, and your fingertip touches the end of the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.right.why">
        <source>The clip uses light to see how much oxygen is in your blood. It does not hurt. Your left hand stays free.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.place.right.caution">
        <source>The hand must be warm and the nail bare. Cold fingers and nail polish can spoil the reading. No clip on sore skin.</source>
        <extracomment>Caution in a box on this page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.title">
        <source>Tape the cable to your right hand</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the back of the right hand while making a fist. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.body">
        <source>Make a fist with your right hand. Press 1 strip over the cable on the back of the hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.right">
        <source>You can make a fist, and the cable does not pull on the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.why">
        <source>The fist leaves some slack in the cable. So the clip stays on when your hand moves.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.caution">
        <source>Do not put tape on sore or broken skin, or if you are allergic to it. Do not wrap tape around the hand or finger.</source>
        <extracomment>Caution in a box on this page: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.title">
        <source>Tape the cable to your right forearm</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the right forearm. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.body">
        <source>Lay the cable along your right arm. Press 1 strip over it, half way to the elbow.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.right">
        <source>You can bend your arm, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.why">
        <source>A cable that lies flat is less likely to catch on the bed or on you.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.right.title">
        <source>Plug in the finger clip last</source>
        <extracomment>Title of the page: last of all, the plug of the finger clip on the right hand goes into the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.right.body">
        <source>Sit down on your bed. With your left hand, put the plug of the clip into its port on the recorder.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.right.right">
        <source>The plug is in all the way, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.right.why">
        <source>This plug goes in last, so that both hands stay free until now.</source>
        <extracomment>Answer to &quot;Why this?&quot;: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.finger_probe.plug.right.caution">
        <source>Keep the cable along your right arm, never around your neck. Leave some slack.</source>
        <extracomment>Caution in a box on this page: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ecg_electrodes.place.title">
        <source>Stick the 2 heart pads on your chest</source>
        <extracomment>Title of the page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ecg_electrodes.place.body">
        <source>Stick 1 under your right collarbone and 1 on your lowest left rib. The skin must be bare and dry.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ecg_electrodes.place.right">
        <source>Both pads stick flat all around.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ecg_electrodes.place.why">
        <source>The heart pads pick up your heartbeat through the skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.ecg_electrodes.place.caution">
        <source>Do not put pads on sore or broken skin, or if you are allergic to tape. Call your clinic.</source>
        <extracomment>Caution in a box on this page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.body_position_sensor.place.title">
        <source>Put the position sensor on your chest belt</source>
        <extracomment>Title of the page: the body position sensor goes on the chest belt, arrow up. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.body_position_sensor.place.body">
        <source>Fasten it in the middle of the belt. Its arrow points up to your head.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.body_position_sensor.place.right">
        <source>It lies flat, and the arrow points to your head.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.body_position_sensor.place.why">
        <source>It shows if you lie on your back, your side or your belly.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.snore_microphone.place.title">
        <source>Tape the snore sensor to your neck</source>
        <extracomment>Title of the page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.snore_microphone.place.body">
        <source>Hum and feel for your voice box. Put the sensor beside it, on the side of your neck. Press 1 strip over it.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.snore_microphone.place.right">
        <source>It stays flat when you hum and turn your head.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.snore_microphone.place.why">
        <source>It picks up the sound of snoring through the skin of your neck.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.snore_microphone.place.caution">
        <source>Lead its cable straight down under your clothes, never around your neck. No tape on sore skin or with a tape allergy.</source>
        <extracomment>Caution in a box on this page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.title">
        <source>Stick the 2 pads on your left leg</source>
        <extracomment>Title of the page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.body">
        <source>Stick 1 above the other on the outer front of your left lower leg. Tape their cable flat with 1 strip.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.right">
        <source>Both pads stick flat, and the cable does not pull when you bend your knee.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.why">
        <source>The pads pick up when the muscles of your left leg move in your sleep.</source>
        <extracomment>Answer to &quot;Why this?&quot;: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.caution">
        <source>Do not put pads or tape on sore or broken skin, or if you are allergic to tape. Call your clinic.</source>
        <extracomment>Caution in a box on this page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.title">
        <source>Stick the 2 pads on your right leg</source>
        <extracomment>Title of the page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.body">
        <source>Stick 1 above the other on the outer front of your right lower leg. Tape their cable flat with 1 strip.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.right">
        <source>Both pads stick flat, and the cable does not pull when you bend your knee.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.why">
        <source>The pads pick up when the muscles of your right leg move in your sleep.</source>
        <extracomment>Answer to &quot;Why this?&quot;: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.caution">
        <source>Do not put pads or tape on sore or broken skin, or if you are allergic to tape. Call your clinic.</source>
        <extracomment>Caution in a box on this page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.check.title">
        <source>Look at each part once more</source>
        <extracomment>Title of the page: after the last plug: each sensor is looked at once more. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.check.body">
        <source>Look at each sensor from head to toe. Fix what is loose.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: after the last plug: each sensor is looked at once more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.check.right">
        <source>Each part looks like its picture, and no plug is loose.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: after the last plug: each sensor is looked at once more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.check.caution">
        <source>No tube or cable may lie around your neck. Keep children and pets away from the cables.</source>
        <extracomment>Caution in a box on this page: after the last plug: each sensor is looked at once more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.switch.title">
        <source>Turn the recorder on</source>
        <extracomment>Title of the page: the recorder is started with a sliding switch. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.switch.body">
        <source>Slide the switch on the recorder until it stops.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder is started with a sliding switch.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.switch.right">
        <source>The switch is at its end and stays there.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder is started with a sliding switch.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.switch.why">
        <source>From now on the recorder saves your night.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder is started with a sliding switch.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.set_time.title">
        <source>The recorder starts by itself</source>
        <extracomment>Title of the page: the recorder starts by itself at a set time. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.set_time.body">
        <source>It starts at a set time. You do not have to press anything.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder starts by itself at a set time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.set_time.right">
        <source>All plugs are in. You pressed nothing.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder starts by itself at a set time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.start.set_time.why">
        <source>Your clinic has set the time, so this is 1 thing less for you to do.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder starts by itself at a set time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.light.title">
        <source>See what the light does</source>
        <extracomment>Title of the page: the person looks at the recorder&apos;s light and says what it does. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.light.body">
        <source>Look at the light on the recorder for a few seconds. Then tap what you see.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the person looks at the recorder&apos;s light and says what it does.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.light.right">
        <source>The light shows that the recorder is recording.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the person looks at the recorder&apos;s light and says what it does.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.tried_to_sleep_after_waking.title">
        <source>How long did you try to sleep after that?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters. After the final waking: staying in bed and trying to sleep again.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.tried_to_sleep_after_waking.short">
        <source>Trying to sleep after that</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.slept.title">
        <source>How long did you sleep, all in all?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters. The person&apos;s own idea.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.slept.short">
        <source>Sleep, all in all</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.hours_minutes">
        <source>%1 h %2 min</source>
        <extracomment>A length of time. %1 hours and %2 minutes; both may be 0.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="amount.hour">
        <source>1 h</source>
        <extracomment>On a button that makes a length of time longer or shorter by this much.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.recording_from">
        <source>Recording seen to start</source>
        <extracomment>Name of a time that nobody asked about: the recorder&apos;s light showed that it records.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="puzzle.recording_to">
        <source>Recorder stopped</source>
        <extracomment>Name of a time that nobody asked about: the person switched the recorder off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.note_twice">
        <source>%1 came twice that night. We will ask which one.</source>
        <extracomment>Note beside a time, on the night when the clocks go back. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.note_never">
        <source>%1 did not come that night. We will ask what you mean.</source>
        <extracomment>Note beside a time, on the night when the clocks go forward. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.note_either">
        <source>%1, the first or the second one</source>
        <extracomment>Note beside a time that came twice; the person does not know which of the two it was.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.twice">
        <source>%1 came twice that night. Which one do you mean?</source>
        <extracomment>Question, on the night when the clocks go back. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.twice_why">
        <source>The clocks went back, so one hour came 2 times.</source>
        <extracomment>Under that question.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.never">
        <source>%1 did not come that night. Which time do you mean?</source>
        <extracomment>Question, on the night when the clocks go forward. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.never_why">
        <source>The clocks went forward and left it out.</source>
        <extracomment>Under that question.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.before_back">
        <source>%1, before the clocks went back</source>
        <extracomment>One of 2 answers: which of 2 equal times. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.after_back">
        <source>%1, after the clocks went back</source>
        <extracomment>One of 2 answers: which of 2 equal times. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.before_forward">
        <source>%1, before the clocks went forward</source>
        <extracomment>One of 2 answers. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.after_forward">
        <source>%1, after the clocks went forward</source>
        <extracomment>One of 2 answers. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.first">
        <source>%1 (the first)</source>
        <extracomment>A time that came twice that night: the first of the two. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="hour.second">
        <source>%1 (the second)</source>
        <extracomment>A time that came twice that night: the second of the two. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.build">
        <source>Tap the drawing that is most like you, if you wish.</source>
        <extracomment>Small words on the first page, over 3 drawn persons to choose from. Optional.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.build.slim">
        <source>Drawing 1, slim</source>
        <extracomment>Name of a drawn person, for screen readers only.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.build.medium">
        <source>Drawing 2, in between</source>
        <extracomment>Name of a drawn person, for screen readers only.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.build.broad">
        <source>Drawing 3, broad</source>
        <extracomment>Name of a drawn person, for screen readers only.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.breath_guide">
        <source>Breathe with it. Close the belt when the air is out.</source>
        <oldsource>Breathe with the shape. Close the belt when the air is out.</oldsource>
        <extracomment>Beside a shape that widens and narrows with a calm breath, on the pages of the belts.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.day.title">
        <source>Was today a usual day?</source>
        <extracomment>Question of the evening. It may be skipped.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.day.usual">
        <source>Yes, a usual day</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.day.unusual">
        <source>No, not usual</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.nap.title">
        <source>Did you nap today?</source>
        <extracomment>Question of the evening. It may be skipped.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.nap.none">
        <source>No nap</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.nap.short">
        <source>Less than 30 minutes</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.nap.long">
        <source>30 minutes or more</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.caffeine.title">
        <source>When was your last coffee, tea or cola?</source>
        <extracomment>Question of the evening: the last drink of the day with caffeine. It may be skipped.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.caffeine.none">
        <source>None after noon</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.caffeine.afternoon">
        <source>In the afternoon</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.caffeine.evening">
        <source>In the evening</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.alcohol.title">
        <source>Did you drink alcohol this evening?</source>
        <extracomment>Question of the evening. No blame. It may be skipped.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.alcohol.none">
        <source>No</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.alcohol.little">
        <source>1 or 2 drinks</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.alcohol.more">
        <source>3 or more drinks</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.medicines.title">
        <source>Did you take your medicines as usual?</source>
        <extracomment>Question of the evening. It advises nothing. It may be skipped.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.medicines.usual">
        <source>Yes, or I take none</source>
        <extracomment>Answer to it. Also right for somebody who takes none.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.medicines.missed">
        <source>I left some out</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="evening.medicines.other">
        <source>I took something else</source>
        <extracomment>Answer to it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.calm.title">
        <source>Breathe calmly</source>
        <extracomment>Signal check: title. The person does this for some seconds while the recorder runs.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.calm.body">
        <source>A short check of the sensors. Sit or lie still and breathe as you like.</source>
        <extracomment>Under it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.deep.title">
        <source>Take 3 deep breaths</source>
        <extracomment>Signal check: title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.deep.body">
        <source>Breathe in deep through your nose, then out. Do it 3 times.</source>
        <extracomment>Under it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.hold.title">
        <source>Hold your breath</source>
        <extracomment>Signal check: title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.hold.body">
        <source>Breathe out, then hold your breath. Stop at once if it does not feel good. You can skip this.</source>
        <extracomment>Under it. Nobody is to hold the breath who does not feel well doing so.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.finger.title">
        <source>Move the finger with the clip</source>
        <extracomment>Signal check: title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.finger.body">
        <source>Bend and stretch that finger a few times. Leave the clip on.</source>
        <extracomment>Under it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.start">
        <source>Start</source>
        <extracomment>Large button: begins that task; a number counts down.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.running">
        <source>Keep going</source>
        <extracomment>The same button while the number counts down; it cannot be tapped.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.now">
        <source>Now</source>
        <extracomment>Over the number that counts down.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="signal.skip">
        <source>Skip this</source>
        <extracomment>Button: leaves this task out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="unit.seconds">
        <source>seconds</source>
        <extracomment>Unit beside a number that counts down.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="unit.times">
        <source>times</source>
        <extracomment>Unit beside a number: how often.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.untimed.add">
        <source>I was awake, but I do not know when</source>
        <extracomment>Button: the person was awake some times but does not know when.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.untimed.times">
        <source>About how many times?</source>
        <extracomment>Question after that button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="event.untimed.minutes">
        <source>How long were you awake, all in all?</source>
        <extracomment>Question after that one: all these times together.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="answer.untimed">
        <source>Awake, hour not known. How many times: %1. Minutes in all: %2</source>
        <extracomment>Times awake that nobody knows the hour of. %1: how many. %2: minutes together.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="morning.gap">
        <source>This tablet was off for some time between %1 and %2. Please add what it could not note.</source>
        <extracomment>In the morning, when the tablet was off in the night. %1 and %2 are times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.hint.gap">
        <source>The tablet was off for some time between %1 and %2. Did anything happen then?</source>
        <extracomment>Under a question about the night, for the same reason. %1 and %2 are times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.skin">
        <source>Look at your skin once more at %1. Leave this page open and we will ask.</source>
        <extracomment>On the last page. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.again.title">
        <source>Look at your skin once more</source>
        <extracomment>Title half an hour after the tape came off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="skin.again.hurt">
        <source>Do not rub or cover the spot. Call your clinic: %1.</source>
        <extracomment>Half an hour later, when the skin is still sore. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.no_place.title">
        <source>The place for your diary is missing</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="trouble.no_place.body">
        <source>All your notes are safe. If there is a memory stick, put it in and try again. If not, call your clinic. %1</source>
        <extracomment>Under that title. The place is a folder, or a memory stick. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.title">
        <source>Your sleep test at home</source>
        <extracomment>Title of the printed sheet that goes home with the kit.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.call">
        <source>Questions or trouble? Call</source>
        <extracomment>Sheet, over the clinic&apos;s phone number in very large type.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.code">
        <source>Study code</source>
        <extracomment>Sheet, small, over the study code, such as SM-0417.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.qr">
        <source>QR code with the study code %1</source>
        <extracomment>Sheet: said by a screen reader in place of the square code. %1 is the study code.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.bag.title">
        <source>What is in the bag</source>
        <extracomment>Heading on the sheet, over the list of the things in the bag.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.bag.missing">
        <source>Is something missing? Call your clinic: %1.</source>
        <extracomment>Sheet, under that list. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.before.title">
        <source>Before bed</source>
        <extracomment>Heading on the sheet: what to do before the kit is put on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.before.start">
        <source>Start at %1. Then you are in bed by about %2.</source>
        <extracomment>Sheet, under that heading. %1 and %2 are times of day.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.on.title">
        <source>Put the kit on</source>
        <extracomment>Heading on the sheet, over the numbered steps with pictures.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.like">
        <source>Do it as in step %1.</source>
        <extracomment>Sheet: a step that is done in the same way as one before it. %1 is the number of that step.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.light.title">
        <source>The light on the recorder</source>
        <extracomment>Heading on the sheet: what the recorder&apos;s light can look like and what it means.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.light.body">
        <source>Look at the light for a few seconds. It may take %1 seconds to come on.</source>
        <extracomment>Sheet, under that heading. %1 is a number of seconds.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.light.other">
        <source>Does the light do something else? Call your clinic: %1.</source>
        <extracomment>Sheet, under the list of what the light can look like. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.light.start_again">
        <source>Start the recorder once more. Then look at the light again.</source>
        <extracomment>Sheet: what to do when the light shows that the recorder did not start.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.light.call_clinic">
        <source>Call your clinic: %1.</source>
        <extracomment>Sheet: what to do when the light shows a fault. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.night.title">
        <source>In the night</source>
        <extracomment>Heading on the sheet.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.night.up">
        <source>I have to get up</source>
        <extracomment>Sheet, in the night, as the person would say it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.night.up.advice">
        <source>Free the cables first, then walk. Back in bed, see that each part is still on.</source>
        <extracomment>Sheet: what to do then.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.night.off.advice">
        <source>Put it back on as in its step. Then look at the light on the recorder.</source>
        <extracomment>Sheet: what to do when something came off in the night. &quot;Its step&quot; is the numbered step with the picture of that part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.night.light.advice">
        <source>Push each plug in once more and look again. Still wrong? Call %1, or keep the kit on and sleep.</source>
        <extracomment>Sheet: what to do when the light looks wrong in the night. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.morning.title">
        <source>In the morning</source>
        <extracomment>Heading on the sheet: the diary, then taking the kit off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.morning.diary">
        <source>Leave the kit on for now. Fill in the paper diary on the last page first. Then take the kit off.</source>
        <extracomment>Sheet, under that heading. The diary is the last page of the sheet.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.pack.body">
        <source>Put each part in the bag and tick it here.</source>
        <extracomment>Sheet, over the list of what goes back to the clinic; each has a box to tick.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.pack.diary">
        <source>this sheet with the paper diary</source>
        <extracomment>Sheet: one more thing in that list, lower case.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.diary.title">
        <source>Paper diary</source>
        <extracomment>Title of the page on which the person writes down the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.diary.evening">
        <source>Date of the evening</source>
        <extracomment>Paper diary: stands before a line on which the person writes the date of the evening.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.diary.how">
        <source>Fill this in when you wake up. In each row, draw a line from start to end. Your best guess is fine. Leave out what you do not know.</source>
        <extracomment>Paper diary, over a grid with one row for each thing and the hours of the night across.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.diary.lights_out">
        <source>Light was out</source>
        <extracomment>Paper diary, name of a row of the grid: from lights out to lights on. At most 20 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.diary.awake">
        <source>Awake</source>
        <extracomment>Paper diary, name of a row of the grid: times awake. At most 20 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.diary.off">
        <source>Off: %1</source>
        <extracomment>Paper diary, name of a row of the grid: while this part was off. %1 is a part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.diary.hours">
        <source>hours</source>
        <extracomment>Paper diary: unit after the line on which the person writes how long they slept.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.back">
        <source>Back to the front desk</source>
        <extracomment>Button: back to the clinic&apos;s own part of the app.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.open">
        <source>For clinic staff</source>
        <extracomment>Button on the first and the last page of a night, small: staff of the clinic open their part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.busy">
        <source>One moment ...</source>
        <extracomment>Front desk: something is being done that takes a moment.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.look_at_fields">
        <source>Please look at the marked fields.</source>
        <extracomment>Front desk, above a form: something in it is wrong.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.settings_damaged">
        <source>The settings of the front desk cannot be read. Give them again under &quot;This tablet&quot;.</source>
        <extracomment>Front desk: its own settings file cannot be read.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="ready.title">
        <source>This tablet is ready</source>
        <extracomment>Page of a tablet on which no patient&apos;s visit is prepared.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="ready.body">
        <source>No visit is on it yet. The clinic makes one at the front desk.</source>
        <extracomment>The same page, below. The clinic prepares a visit first.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="entered.title">
        <source>The record is written</source>
        <extracomment>Staff have typed in a paper diary or changed a record; it is written.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="entered.body">
        <source>Its name is %1. It is on this tablet. Take it out at the front desk.</source>
        <extracomment>Below it. %1 is the name of the record&apos;s folder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sitting.paper">
        <source>From paper: %1, night %2</source>
        <extracomment>Band above the questions while staff type in a paper diary. %1 study code, %2 number of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sitting.amend">
        <source>Change of the record: %1, night %2</source>
        <extracomment>Band above the questions while staff change a record. %1 study code, %2 number of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.section.form">
        <source>New visit</source>
        <extracomment>Front desk, menu: make a new visit.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.section.visits">
        <source>Visits</source>
        <extracomment>Front desk, menu: list of visits.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.section.kits">
        <source>Kits</source>
        <extracomment>Front desk, menu: list of kits.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.section.languages">
        <source>Languages</source>
        <extracomment>Front desk, menu: list of languages.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.section.tablet">
        <source>This tablet</source>
        <extracomment>Front desk, menu: clinic, clock and PIN of this tablet.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.section.leave">
        <source>Lock and leave</source>
        <extracomment>Front desk, menu: lock it and give the tablet back to the patient&apos;s pages.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.first_pin.title">
        <source>Choose a PIN for the front desk</source>
        <extracomment>Title: staff choose the first PIN.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.first_pin.body">
        <source>The front desk is for clinic staff. The PIN keeps patients out of it. Only the clinic should know it.</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.title">
        <source>Front desk</source>
        <extracomment>Title: staff give the PIN.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.field">
        <source>PIN</source>
        <extracomment>Label of the field for the PIN.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.again">
        <source>PIN once more</source>
        <extracomment>Label of the second field for a new PIN.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.old">
        <source>PIN so far</source>
        <extracomment>Label of the field for the PIN so far.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.new">
        <source>New PIN</source>
        <extracomment>Label of the field for a new PIN.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.hint">
        <source>6 digits or more</source>
        <extracomment>Below the field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.set">
        <source>Use this PIN</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.open">
        <source>Open</source>
        <extracomment>Button: opens the front desk.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.change">
        <source>Change the PIN</source>
        <extracomment>Button and heading: the new PIN counts from now on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.changed">
        <source>The new PIN counts from now on.</source>
        <extracomment>Said after that.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.wrong">
        <source>That is not the PIN.</source>
        <extracomment>Said after a wrong PIN.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.differs">
        <source>Not the same as above</source>
        <extracomment>Below the second field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.not_now">
        <source>Too many wrong PINs. Wait a while, then try again.</source>
        <extracomment>Said when too many wrong PINs were given before.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.wait">
        <source>Wrong PINs so far: %2. The next try is open in %1 seconds.</source>
        <extracomment>Too many wrong PINs. %1 seconds to wait, %2 how many were wrong.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.damaged">
        <source>The file with the PIN is damaged. Nobody can open the front desk with it.</source>
        <extracomment>The file with the PIN is damaged.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.forgotten">
        <source>PIN forgotten</source>
        <extracomment>Button: opens the page that says what happens then.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.pin.limits">
        <source>The PIN locks this screen. It does not protect a stolen tablet: for that, the disk must be encrypted.</source>
        <extracomment>Caution: what the PIN does not do.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.forgotten.title">
        <source>The PIN is forgotten</source>
        <extracomment>Title: what happens when the PIN is given up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.forgotten.body">
        <source>A PIN cannot be read back. You can take the lock off. Then the front desk forgets the clinic, its settings, and every visit whose records are all safe elsewhere.</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.forgotten.keeps">
        <source>A visit with something that is nowhere else stays: a night in it must not be lost.</source>
        <extracomment>Caution on the same page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.forgotten.sure">
        <source>I am from the clinic, and I want this</source>
        <extracomment>Box to tick.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.forgotten.main">
        <source>Take the lock off</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.forgotten.not_sure">
        <source>Tick the box first.</source>
        <extracomment>Said when the box is not ticked.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.forgotten.done">
        <source>The lock is off. Choose a new PIN.</source>
        <extracomment>Said after that.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visits.title">
        <source>Visits on this tablet</source>
        <extracomment>Title of the list.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visits.none">
        <source>No visit is here.</source>
        <extracomment>In place of the list.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.code">
        <source>Study code</source>
        <extracomment>Head of a column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.label">
        <source>Kit</source>
        <extracomment>Head of a column: what is written on the bag of the kit.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.nights">
        <source>Nights</source>
        <extracomment>Head of a column: how many nights.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.night">
        <source>Night</source>
        <extracomment>Head of a column, and label of a field: which night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.stand">
        <source>State</source>
        <extracomment>Head of a column: how far it is.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.notes">
        <source>From the notes</source>
        <extracomment>Head of a column: what the patient&apos;s notes say of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.evening">
        <source>Evening</source>
        <extracomment>Head of a column: date of the evening.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.needed">
        <source>Needed signals, min: least / likely / most</source>
        <extracomment>Head of a column: minutes with all needed signals, three numbers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.record">
        <source>Record</source>
        <extracomment>Head of a column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.when">
        <source>When</source>
        <extracomment>Head of a column: date and time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.sensor">
        <source>Sensor</source>
        <extracomment>Head of a column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.at_least">
        <source>At least, min</source>
        <extracomment>Head of a column of minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.best_guess">
        <source>Likely, min</source>
        <extracomment>Head of a column of minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.at_most">
        <source>At most, min</source>
        <extracomment>Head of a column of minutes.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.cause">
        <source>Reason</source>
        <extracomment>Head of a column: why time was lost.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.off">
        <source>Lost, min</source>
        <extracomment>Head of a column of minutes: how long this lasted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.alone">
        <source>Gain without it, min</source>
        <extracomment>Head of a column of minutes: what the night would gain without this one reason.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.kit">
        <source>Kit file</source>
        <extracomment>Head of a column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.parts">
        <source>Parts</source>
        <extracomment>Head of a column: number of parts.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.check">
        <source>Check</source>
        <extracomment>Head of a column: outcome of the check.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.where">
        <source>Where</source>
        <extracomment>Head of a column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.step">
        <source>Step</source>
        <extracomment>Head of a column: step of putting the kit on.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.what">
        <source>What to do</source>
        <extracomment>Head of a column: what the patient is told.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.code_of_language">
        <source>Code</source>
        <extracomment>Head of a column: two letters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.col.review">
        <source>Review</source>
        <extracomment>Head of a column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.stand.prepared">
        <source>prepared</source>
        <extracomment>State of a visit.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.stand.under_way">
        <source>night %1 is under way</source>
        <extracomment>State of a visit; %1 is the number of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.stand.between">
        <source>night %1 has its record</source>
        <extracomment>State of a visit between two nights; %1 is the number of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.stand.recorded">
        <source>all nights have records</source>
        <extracomment>State of a visit.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.stand.unread">
        <source>cannot be read</source>
        <extracomment>State of a visit that cannot be read.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.stand.tonight">
        <source>on this tablet, %1</source>
        <extracomment>State of the visit that the tablet shows at the bedside; %1 is one of the states.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.verdict.enough">
        <source>enough</source>
        <extracomment>From the notes, the night is likely long enough.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.verdict.short">
        <source>too short</source>
        <extracomment>From the notes, the night is likely too short.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.verdict.borderline">
        <source>borderline</source>
        <extracomment>From the notes it cannot be told.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.verdict.unknown">
        <source>not known</source>
        <extracomment>The notes do not say.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.verdict.contradictory">
        <source>answers do not fit</source>
        <extracomment>Answers contradict each other.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.record.damaged">
        <source>does not verify</source>
        <extracomment>State of a record.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.record.taken_out">
        <source>verified, taken out</source>
        <extracomment>State of a record: a copy is on a stick.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.record.only_here">
        <source>verified, only here</source>
        <extracomment>State of a record: no copy is anywhere else.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.record.amended">
        <source>%1, change %2</source>
        <extracomment>Instead of a date alone: the record was changed; %1 the date, %2 how many times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.records.heading">
        <source>Records</source>
        <extracomment>Heading of a list.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.records.none">
        <source>No record yet.</source>
        <extracomment>In place of the list.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.contradictions.heading">
        <source>Answers that do not fit</source>
        <extracomment>Heading of a list.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.sensors.heading">
        <source>Minutes of each sensor, night %1, from the notes</source>
        <extracomment>Heading of a table; %1 number of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.lost.heading">
        <source>Why time was lost</source>
        <extracomment>Heading of a table.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.lost.none">
        <source>Nothing was lost, as far as the notes say.</source>
        <extracomment>In place of the table.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.lost.late_start">
        <source>The recording began after lights out</source>
        <extracomment>Reason for lost time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.lost.early_end">
        <source>The recording ended before lights on</source>
        <extracomment>Reason for lost time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visit.title">
        <source>%1, %2</source>
        <extracomment>Title of one visit; %1 study code, %2 what is on the kit&apos;s bag.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visit.line">
        <source>State: %1. Nights: %2. Lights out at %3. %4. Due back %5.</source>
        <extracomment>Below it; %1 state, %2 nights, %3 bed time, %4 language, %5 date.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visit.tonight">
        <source>Put it on this tablet</source>
        <extracomment>Button: the tablet shows this visit at the bedside.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visit.on_tablet">
        <source>%1 is on this tablet. Lock the front desk, and hand it over.</source>
        <extracomment>Said after that; %1 study code.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visit.give_up">
        <source>Give up the night</source>
        <extracomment>Button: the night that was begun will not be finished; what is known of it is written.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visit.given_up">
        <source>The night is marked as given up. What is known of it is in its record.</source>
        <extracomment>Said after that.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.form.title">
        <source>New visit</source>
        <extracomment>Title of a form.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.form.main">
        <source>Make the visit</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.form.made">
        <source>%1 is made.</source>
        <extracomment>Said after that; %1 study code.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.form.made_tonight">
        <source>%1 is made, and is on this tablet.</source>
        <extracomment>The same; the tablet shows it at the bedside now.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.code">
        <source>Study code</source>
        <extracomment>Label of a field. No name of a patient.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.code_hint">
        <source>No name, no date of birth</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.kit">
        <source>Kit</source>
        <extracomment>Label of a choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.kit_label">
        <source>Label on the bag</source>
        <extracomment>Label of a field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.kit_label_hint">
        <source>Such as Bag 12</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.nights">
        <source>Nights</source>
        <extracomment>Label of a field: number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.language">
        <source>Language</source>
        <extracomment>Label of a choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.writing_hand">
        <source>Writes with</source>
        <extracomment>Label of a choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.hand.right">
        <source>the right hand</source>
        <extracomment>One of two.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.hand.left">
        <source>the left hand</source>
        <extracomment>One of two.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.bed_time">
        <source>Lights out at</source>
        <extracomment>Label of a field: planned time of lights out.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.bed_time_hint">
        <source>24 hours, such as 22:05</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.return_by">
        <source>Due back</source>
        <extracomment>Label of a field: date.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.date_hint">
        <source>Such as 2026-11-04</source>
        <extracomment>Below a date.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.field.clock">
        <source>The tablet says %1, %2, %3. That is right</source>
        <extracomment>Box to tick; %1 time, %2 date, %3 time zone.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.option.signal_check">
        <source>With a check of the signals</source>
        <extracomment>Box to tick: optional part of the evening.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.option.evening_questions">
        <source>With questions in the evening</source>
        <extracomment>Box to tick: optional part of the evening.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.option.mirror">
        <source>With the mirror (camera)</source>
        <extracomment>Box to tick: optional part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.option.narration">
        <source>With the voice</source>
        <extracomment>Box to tick: optional part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.title">
        <source>Take records out</source>
        <extracomment>Title and button: copy the records to a stick.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.body">
        <source>Each record is copied, read back and checked on the stick.</source>
        <extracomment>Below the title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.no_stick">
        <source>No stick is plugged in, or none that can be written.</source>
        <extracomment>No stick is plugged in.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.again">
        <source>Look again</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.stick">
        <source>Stick</source>
        <extracomment>Label of a choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.main">
        <source>Copy all to the stick</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.choose">
        <source>Choose a stick first.</source>
        <extracomment>Said when none is chosen.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.safe">
        <source>All records are on the stick, and checked there. You can take the stick out now.</source>
        <extracomment>Said after that: it was unmounted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.out.synced">
        <source>All records are on the stick, and checked there. The system still has hold of it: eject it before you pull it out.</source>
        <extracomment>Said after that: it could not be unmounted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.title">
        <source>Ready for the next patient</source>
        <extracomment>Title and button: removes the visit from the tablet.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.body">
        <source>This removes %1 from the tablet: the visit, its journal and its records.</source>
        <extracomment>Below the title; %1 study code.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.safe">
        <source>Every night has its record, and every record was taken out and checked.</source>
        <extracomment>Everything is safe elsewhere.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.reason">
        <source>Reason why it may go</source>
        <extracomment>Label of a field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.reason_hint">
        <source>It is kept. Do not name the study code.</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.main">
        <source>Remove it for good</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.done">
        <source>The visit is gone from this tablet.</source>
        <extracomment>Said after that.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.against.no_record">
        <source>A night was begun and has no record.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.against.bad_record">
        <source>A record does not verify.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.against.not_taken_out">
        <source>A record is only on this tablet. Take it out first.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.against.journal_unread">
        <source>The journal could not be read. A night may be in it.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.wipe.against.nothing_done">
        <source>Nothing was done with this visit yet.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.amend.title">
        <source>Change a record</source>
        <extracomment>Title and button: change what a record says.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.amend.body">
        <source>The record stays as it is. A new one is written beside it. It says who changed what, and why.</source>
        <extracomment>Below the title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.amend.main">
        <source>Open the answers</source>
        <extracomment>Button: opens the answers.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.who">
        <source>Who you are</source>
        <extracomment>Label of a field: who types.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.who_hint">
        <source>Initials or your role</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.why">
        <source>Reason</source>
        <extracomment>Label of a field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.why_hint">
        <source>Such as: the patient called and said so</source>
        <extracomment>Below it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.paper.title">
        <source>Type in a paper diary</source>
        <extracomment>Title and button: staff type in what the patient wrote on paper.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.paper.body">
        <source>The same questions as on the tablet. The record says that it came from paper.</source>
        <extracomment>Below the title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.paper.evening">
        <source>Evening of</source>
        <extracomment>Label of a field: date of the evening on which the night began.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.paper.main">
        <source>Open the questions</source>
        <extracomment>Button: opens the questions.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.sitting.nothing">
        <source>No record was written.</source>
        <extracomment>Said after staff came back without writing anything.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.sitting.written">
        <source>Written: %1</source>
        <extracomment>Said after a record was written; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.title">
        <source>Print the sheet</source>
        <extracomment>Title and button: the take-home sheet.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kits.title">
        <source>Kits</source>
        <extracomment>Title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kits.body">
        <source>Each kit file is checked as it is listed. Open one to see its walk-through.</source>
        <extracomment>Below the title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kits.fine">
        <source>fine</source>
        <extracomment>Outcome of the check of a kit file.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kits.faults">
        <source>faults: %1</source>
        <extracomment>Outcome of the check of a kit file; %1 how many.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kits.on_stick">
        <source>on a stick</source>
        <extracomment>Where a kit file is.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kits.on_tablet">
        <source>on this tablet</source>
        <extracomment>Where a kit file is.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kit.title">
        <source>Kit %1</source>
        <extracomment>Title of one kit; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kit.line">
        <source>Steps: %1. Minutes: %2. Strips of tape: %3.</source>
        <extracomment>Below it; %1 steps, %2 minutes, %3 strips of tape.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kit.take">
        <source>Take it over into this tablet</source>
        <extracomment>Button: copies the kit file from the stick.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.kit.taken">
        <source>The kit is on this tablet now.</source>
        <extracomment>Said after that.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.languages.title">
        <source>Languages</source>
        <extracomment>Title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.languages.body">
        <source>A language that no clinical translator has reviewed is for patients only with somebody at hand who speaks it.</source>
        <extracomment>Below the title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.languages.source">
        <source>source</source>
        <extracomment>State of a language.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.languages.unreviewed">
        <source>needs review by a clinical translator</source>
        <extracomment>State of a language.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.languages.desk">
        <source>Language of the front desk</source>
        <extracomment>Label of a choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.languages.use">
        <source>Use it</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.tablet.title">
        <source>This tablet</source>
        <extracomment>Title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.tablet.zone">
        <source>Time zone</source>
        <extracomment>Label of a field: IANA time zone.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.tablet.now">
        <source>There it is %1, %2</source>
        <extracomment>Below it; %1 time, %2 date.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.tablet.save">
        <source>Save</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.tablet.saved">
        <source>Saved. New visits begin with this.</source>
        <extracomment>Said after that.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.clinic.heading">
        <source>The clinic</source>
        <extracomment>Heading of a form.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.clinic.name">
        <source>Name of the clinic</source>
        <extracomment>Label of a field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.clinic.phone">
        <source>Phone</source>
        <extracomment>Label of a field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.clinic.hours">
        <source>Hours</source>
        <extracomment>Label of a field: when the phone is answered.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.clinic.hours_hint">
        <source>Such as mon-fri 08:00-17:00, sat 09:00-12:00</source>
        <extracomment>Below it. Days are written in English in three letters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.clinic.phone_outside_hours">
        <source>Phone outside hours</source>
        <extracomment>Label of a field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.clinic.emergency">
        <source>Emergency number</source>
        <extracomment>Label of a field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.disk_full">
        <source>There is no room left. Nothing was lost; make room and try again.</source>
        <extracomment>Something could not be written.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.read_only">
        <source>It cannot be written there: it is write-protected.</source>
        <extracomment>Something could not be written.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.no_place">
        <source>The folder or the stick is not there.</source>
        <extracomment>Something could not be written.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.second_copy">
        <source>Another copy of the program has this open. Close that one first.</source>
        <extracomment>A journal is open in another copy of the program.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.bad_code">
        <source>Letters, digits, - and _, at most 32, such as SM-0417</source>
        <extracomment>Below the study code.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.visit_exists">
        <source>There is a visit of this code. Take another one.</source>
        <extracomment>Below the study code.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.missing">
        <source>This is needed</source>
        <extracomment>Below an empty field.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.bad_phone">
        <source>This cannot be dialled. Right would be such as 555-0142</source>
        <extracomment>Below a phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.bad_date">
        <source>No date. Right would be such as 2026-11-04</source>
        <extracomment>Below a date.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.bad_time_of_day">
        <source>No time. Right would be such as 22:05</source>
        <extracomment>Below a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.bad_nights">
        <source>Right would be a number from 1 up to the nights of the visit, at most 14</source>
        <extracomment>Below a number of nights, or of one night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.bad_hours">
        <source>Right would be such as mon-fri 08:00-17:00, sat 09:00-12:00</source>
        <extracomment>Below the hours of the clinic.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.unknown_zone">
        <source>No such zone. Right would be such as America/New_York</source>
        <extracomment>Below the time zone.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.no_phone">
        <source>The clinic&apos;s phone number is missing. Give it under &quot;This tablet&quot; first.</source>
        <extracomment>Above the form of a new visit: a sheet without a number does not leave the desk.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.clock_not_confirmed">
        <source>Look at the clock and confirm it</source>
        <extracomment>Beside the clock in the form of a new visit.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.reason_missing">
        <source>A reason is needed</source>
        <extracomment>Below the reason.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.reason_names_code">
        <source>Leave the study code out: the reason is kept</source>
        <extracomment>Below the reason.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.record_exists">
        <source>Another record of that name is there already. It was not touched.</source>
        <extracomment>A stick has another record of the same name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.pin_form">
        <source>Right would be 6 to 64 digits</source>
        <extracomment>Below a new PIN.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.pin_set">
        <source>There is a PIN already</source>
        <extracomment>There is a PIN already.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.no_print_service">
        <source>No print service answers on this tablet. Save the sheet as a PDF instead.</source>
        <extracomment>Printing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.no_printer">
        <source>No printer is set up. Save the sheet as a PDF instead.</source>
        <extracomment>Printing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.printer_stopped">
        <source>The printer is stopped. Nothing was sent to it.</source>
        <extracomment>Printing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.not_accepted">
        <source>The printer takes no jobs. Nothing was printed.</source>
        <extracomment>Printing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.body">
        <source>What will be printed, page by page: %1 pages.</source>
        <extracomment>Below the title; %1 how many pages.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.paper">
        <source>Paper</source>
        <extracomment>Label of a choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.size">
        <source>Letters</source>
        <extracomment>Label of a choice: size of the letters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.normal">
        <source>normal</source>
        <extracomment>One of two.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.large">
        <source>large</source>
        <extracomment>One of two.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.printer">
        <source>Printer</source>
        <extracomment>Label of a choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.page">
        <source>Page</source>
        <extracomment>Label of a choice: which page of the preview.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.main">
        <source>Print</source>
        <extracomment>Button.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.save">
        <source>Save as PDF</source>
        <extracomment>Button: the sheet as a PDF on the stick, or in the folder for documents.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.sent">
        <source>Handed to %1.</source>
        <extracomment>Said after that; %1 name of the printer.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.saved">
        <source>Saved: %1</source>
        <extracomment>Said after that; %1 name of the file.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.picture">
        <source>Page %1 of the sheet</source>
        <extracomment>For screen readers: a picture of one page of the sheet; %1 which.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.visit.skin_sore">
        <source>Half an hour after the tape came off, the patient said that the skin was still sore.</source>
        <extracomment>Caution on the page of one visit: the patient said so half an hour after the tape came off, when the record was written already.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="q.hint.unnamed_off">
        <source>At %1 you noted that something came off. Which part was it?</source>
        <extracomment>Under the question what came off. %1 is a time.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.leave">
        <source>Leave</source>
        <extracomment>Button on the page that asks for the PIN: back to the patient&apos;s pages.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="breath.sound_on">
        <source>With sound</source>
        <extracomment>Small button beside the breathing guide of a belt, short: a soft tone then says at the end of each breath out that the belt may be closed now.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="breath.sound_off">
        <source>Silent</source>
        <extracomment>The same button while the tone sounds, short: makes it silent.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.night_sound">
        <source>Soft sound when I note something</source>
        <extracomment>Last page of the evening, a choice to tick, off at first: a soft tone answers each note of the night. Without it the night is silent.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.bar">
        <source>Practice: nothing is kept</source>
        <extracomment>Stands on top of each page of the practice run.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.end">
        <source>End practice</source>
        <extracomment>Small button on top of each page of the practice run: leaves it for the first page.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.read_to_me">
        <source>Read each page to me</source>
        <extracomment>First page, a choice to tick: the tablet reads each page aloud when it comes up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.stop_reading">
        <source>Stop reading</source>
        <extracomment>Small button in place of &quot;Say it again&quot; while the page is read aloud. Nothing is read by itself after it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="step.mirror">
        <source>Mirror</source>
        <extracomment>Small button on a step: shows the person by the camera as in a mirror, beside the drawing. Nothing of it is kept.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sound.off_for_visit">
        <source>Reading aloud is switched off for this visit. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;: reading aloud is an option of the visit, and it is off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sound.no_device">
        <source>The tablet finds no speaker. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sound.no_recording">
        <source>There is no recording of this page. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sound.failed">
        <source>The recording of this page cannot be played. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;: a recording was there, and could not be played.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.offer">
        <source>Practice first</source>
        <extracomment>Button on the first page, smaller than the one that begins the evening: all steps for practice, by day.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.begin.title">
        <source>A practice run</source>
        <extracomment>Title of the page that begins the practice run.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.begin.body">
        <source>You see the same steps as tonight. Take your time. Nothing is noted, and you can stop at any step.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.begin.caution">
        <source>Keep the tape for tonight. Leave the recorder off, and plug in nothing that starts it.</source>
        <extracomment>Caution on the page that begins the practice run.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.no_tape">
        <source>Practice: do not use the tape now. You need it tonight.</source>
        <extracomment>Caution in the practice run, on a step that uses tape.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.no_start">
        <source>Practice: only look. Do not do this step now, for it starts the recorder.</source>
        <extracomment>Caution in the practice run, on the step that sets the recorder going.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.light">
        <source>Practice: the recorder is off, so there is no light. Tonight you tap what you see.</source>
        <extracomment>In the practice run, on the page about the recorder&apos;s light.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.over.title">
        <source>Practice is over</source>
        <extracomment>Title of the last page of the practice run.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.over.body">
        <source>Take the parts off and put them back into the bag. Tonight you begin again from the first page.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.over.caution">
        <source>Does the recorder show a light now? Call your clinic before tonight: %1.</source>
        <extracomment>Caution on the last page of the practice run. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="practice.over.main">
        <source>Back to the first page</source>
        <extracomment>Button on the last page of the practice run.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="welcome.start_at">
        <source>Time to start: about %1</source>
        <extracomment>First page, small, while the time to start still lies ahead. %1 is a time such as 9:25 PM.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mirror.keeps_nothing">
        <source>You see yourself as in a mirror. No picture is kept, and none is sent.</source>
        <extracomment>In the mirror page, under the camera&apos;s picture. It is a promise: nothing may be added.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mirror.no_camera">
        <source>The tablet finds no camera. Look at the drawing, or use a mirror.</source>
        <extracomment>In the mirror page, where the camera&apos;s picture would be.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="bed.line.plug_in">
        <source>The tablet is not charging. Plug in its charger now, so that it lasts the night.</source>
        <extracomment>In place of that line while the tablet has no charger.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="night.read">
        <source>Read this to me</source>
        <extracomment>Night page, large button under advice: reads it aloud. Nothing is read at night without it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.next.title">
        <source>Night %1 is saved</source>
        <extracomment>Title of the last page of a night when another night follows. %1 is the number of the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.next.body">
        <source>Keep the kit and the tablet here for the next night.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.next.charge">
        <source>Charge the recorder today, so that it is ready tonight.</source>
        <extracomment>Under that, when the kit has a charger for the recorder.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="finished.next.main">
        <source>Begin the next night</source>
        <extracomment>Large button on that page: opens the first page of the next night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.no_print_answer">
        <source>The print service does not answer as it should. Try once more, or save the sheet as a PDF.</source>
        <extracomment>Printing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.no_job">
        <source>The print service no longer knows of the sheet. Look at the printer.</source>
        <extracomment>After printing: the print service has forgotten the job.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.problem.print_not_loaded">
        <source>What makes and prints the sheet could not be loaded. Tell who set up this tablet.</source>
        <extracomment>The part of the program that makes the sheet is missing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.look">
        <source>Look for printers again</source>
        <extracomment>Button, where no printer can be used: asks the print service once more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer_says">
        <source>%1: %2</source>
        <extracomment>A printer and what it says of itself, such as &quot;Front desk: the paper is out&quot;; %1 its name, %2 one or more of desk.printer...</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer_stopped">
        <source>%1 – stopped: %2</source>
        <extracomment>In the list of printers; %1 its name, %2 why.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer_closed">
        <source>%1 – takes no jobs</source>
        <extracomment>In the list of printers; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.job.waiting">
        <source>The sheet waits at %1.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.job.held">
        <source>The print service holds the sheet back at %1.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.job.printing">
        <source>%1 is printing.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.job.stopped">
        <source>%1 has stopped in the middle of the sheet.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.job.printed">
        <source>All of the sheet has gone to %1.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.job.cancelled">
        <source>Somebody has cancelled the sheet at %1. What is missing is not printed.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.job.aborted">
        <source>The print service has given up the sheet at %1. Print it again, or save it as a PDF.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.media-empty">
        <source>the paper is out</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.media-needed">
        <source>it waits for paper</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.media-low">
        <source>little paper is left</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.media-jam">
        <source>paper is stuck in it</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.input-tray-missing">
        <source>the paper tray is not in</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.output-area-full">
        <source>its output tray is full</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.door-open">
        <source>a door is open</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.cover-open">
        <source>a cover is open</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.interlock-open">
        <source>something of it is open</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.toner-empty">
        <source>the toner is used up</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.toner-low">
        <source>little toner is left</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.marker-supply-empty">
        <source>the ink is used up</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.marker-supply-low">
        <source>little ink is left</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.paused">
        <source>somebody has paused it</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.offline">
        <source>it cannot be reached</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.connecting-to-device">
        <source>it is being reached for</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.timed-out">
        <source>it does not answer</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.shutdown">
        <source>it is switched off</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.spool-area-full">
        <source>the print service has no room</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.printer.other">
        <source>it does not say why</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.length">
        <source>Length</source>
        <extracomment>Label of a choice: how much the sheet says.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.short">
        <source>short</source>
        <extracomment>One of two: the figures and titles of the steps, on one leaf.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="desk.print.full">
        <source>full</source>
        <extracomment>One of two: every text of every step.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.first.title">
        <source>Call your clinic first if one of these is true</source>
        <extracomment>Short sheet, title of a box: the questions of the first page in short. Each yes means: call.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.first">
        <source>Allergy to tape or latex. Sore or broken skin. Pacemaker or implant. Oxygen or a breathing machine. Pregnant or under 18. A small child or a confused person in your bed who could get caught in cords. Do not change your treatment on your own.</source>
        <extracomment>Short sheet, under that: what the clinic must know, each in a few words.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.belts">
        <source>Close a belt at the end of a breath out: 2 fingers fit under it.</source>
        <extracomment>Short sheet, over the steps: it holds for each belt. One line, at most 65 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.plugs">
        <source>Each plug goes into the port with the same mark.</source>
        <oldsource>Each plug goes into the port with just as many ridges.</oldsource>
        <extracomment>Short sheet, over the steps: it holds for each plug. One line, at most 65 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.tape">
        <source>Never on sore or broken skin, or if tape makes it itch, sore or red: call your clinic. Never around a hand or finger.</source>
        <extracomment>Short sheet: one caution for all steps with tape or pads; their numbers stand before it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.tube">
        <source>Never lead the tube around your neck: down in front, under your chin and clothes. Not too tight: leave room to swallow.</source>
        <extracomment>Short sheet: one caution for all steps with the nose tube; their numbers stand before it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.cable">
        <source>No cable or tube around your neck: along your arm or under your clothes, with some slack. Keep children and pets away.</source>
        <extracomment>Short sheet: one caution for all steps with cables; their numbers stand before it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.up">
        <source>Free the cables first, then walk. Then look at each part.</source>
        <extracomment>Short sheet: what to do when the person has to get up in the night.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.off">
        <source>Put it back on as in its step. Then look at the light.</source>
        <extracomment>Short sheet: what to do when something came off in the night. &quot;Its step&quot; is the numbered step with the picture of that part.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.light">
        <source>Push in each plug. Still wrong? Call %1, or keep the kit on and sleep.</source>
        <extracomment>Short sheet: what to do when the light looks wrong in the night. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.skin">
        <source>Take that part off slowly and leave it off. Swollen face or hard to breathe? Call %1.</source>
        <extracomment>Short sheet: what to do when the skin itches or hurts. %1 is the local emergency number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.stop">
        <source>Take the tape off slowly, then the rest. Call your clinic in the morning. Very ill? Call %1.</source>
        <extracomment>Short sheet: what to do when the person wants to stop. %1 is the local emergency number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.diary">
        <source>First fill in the paper diary. Keep the kit on.</source>
        <extracomment>Short sheet, beside the heading &quot;In the morning&quot;: before the kit comes off.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.watch">
        <source>It may take %1 seconds. Watch it for a while.</source>
        <extracomment>Short sheet, beside the heading &quot;The light on the recorder&quot;. %1 is a number of seconds. One line, at most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.check_plugs">
        <source>Push each plug in. Then look again.</source>
        <extracomment>Short sheet: what to do when the recorder&apos;s light shows that a plug is not in.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.start_again">
        <source>Start it once more. Then look again.</source>
        <extracomment>Short sheet: what to do when the light shows that the recorder did not start.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.tape_off">
        <source>Do not tear it off. It sticks hard? Wet it with warm water.</source>
        <extracomment>Short sheet: caution for taking off the tape; the number of that step stands before it. One line, at most 65 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.look">
        <source>Look once more in 30 minutes. Still red, torn or blistered? Call %1. Do not rub or cover it.</source>
        <extracomment>Short sheet: after the kit is off; the number of that step stands before it. %1 is the clinic&apos;s phone number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.pack">
        <source>Pack all that was in the bag, and this sheet with the diary.</source>
        <extracomment>Short sheet: packing.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.brief.stays">
        <source>This need not come back: %1.</source>
        <extracomment>Short sheet, under that: a thing of the bag that is used up. %1 is its name, such as &quot;roll of tape&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="sheet.plug">
        <source>Plug in the %1: %2</source>
        <oldsource>Plug in: %1 (%2)</oldsource>
        <extracomment>Sheet, title of a step: the plug of a part goes into its port. %1 is the part, such as &quot;waist belt&quot;, %2 the mark of plug and port, such as &quot;2 ridges&quot;. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.ridges.1">
        <source>1 ridge</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.ridges.2">
        <source>2 ridges</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.ridges.3">
        <source>3 ridges</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.ridges.4">
        <source>4 ridges</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.dots.1">
        <source>1 dot</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.dots.2">
        <source>2 dots</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.dots.3">
        <source>3 dots</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mark.dots.4">
        <source>4 dots</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mistake.belt_twisted">
        <source>Not twisted</source>
        <extracomment>Beside a small picture with a cross, what not to do: a belt must not be twisted.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mistake.prongs_flipped">
        <source>Not with the prongs pointing down</source>
        <extracomment>Beside a small picture with a cross: the prongs of the nose tube must not point down.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mistake.tube_front_neck">
        <source>Not around your neck</source>
        <extracomment>Beside a small picture with a cross: the tube must not be wound around the neck.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mistake.probe_upside">
        <source>Not with the cable under your finger</source>
        <extracomment>Beside a small picture with a cross: the finger clip must not be on upside down, with its cable below the finger. The cable belongs on the side of the nail.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mistake.probe_not_in">
        <source>Not with your finger half in</source>
        <extracomment>Beside a small picture with a cross: the finger must reach the end of the clip.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="mistake.cable_loose">
        <source>Not loose: the cable can catch</source>
        <extracomment>Beside a small picture with a cross: the cable without tape catches on things.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="part.label.marked">
        <source>Now: %1 (%2)</source>
        <extracomment>The same line for a part with a mark on its plug. %1 is the part, %2 the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.unplug.title">
        <source>Pull out the plugs</source>
        <extracomment>Title of a page: the plugs are pulled out of the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.unplug.push.body">
        <source>Hold each plug, not its cable. Pull it straight out of the recorder.</source>
        <extracomment>Under that title, of plugs that were pushed in.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.unplug.snap.body">
        <source>Hold each plug, not its cable. Press it on both sides and pull it out of the recorder.</source>
        <extracomment>Under the first of those titles, of plugs that snapped in: they are pressed on both sides to let go.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.unplug.twist.body">
        <source>Hold each plug, not its cable. Turn it to the left and pull it out of the recorder.</source>
        <extracomment>Under that title, when the kit has plugs that were turned in, clockwise.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.untwist.title">
        <source>Turn the tube off the recorder</source>
        <extracomment>Title of a page: the end of the nose tube, which was turned on to the recorder in the evening, is turned off. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.untwist.body">
        <source>Turn the ring of the tube to the left. Then pull the tube off the recorder.</source>
        <extracomment>Under that title. &quot;To the left&quot; is against the clock.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.unsnap.title">
        <source>Pull the sensors off the belts</source>
        <extracomment>Title of a page: the small sensors, which snapped on to studs of the belts in the evening, are pulled off. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.unsnap.body">
        <source>Hold the belt with 1 hand. Pull off the small sensor with the other.</source>
        <extracomment>Under that title.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message id="off.unplug.other.title">
        <source>Pull out the other plugs</source>
        <extracomment>Title of a page: after the plugs that snapped in, the others are pulled out of the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
