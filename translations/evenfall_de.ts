<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message id="common.back">
        <source>Back</source>
        <extracomment>Button, top of most pages: go to the page before. Nothing already noted is lost.</extracomment>
        <translation>Zurück</translation>
    </message>
    <message id="figure.larger">
        <source>Larger picture</source>
        <extracomment>Button with a picture in it: shows the same picture over the whole screen.</extracomment>
        <translation>Größeres Bild</translation>
    </message>
    <message id="night.awake">
        <source>I am awake</source>
        <extracomment>Night page, a very large area: notes that the person lies awake.</extracomment>
        <translation>Ich liege wach</translation>
    </message>
    <message id="night.back_to_sleep">
        <source>Going back to sleep</source>
        <extracomment>Night page, the same area later: notes that the person tries to sleep again.</extracomment>
        <translation>Weiterschlafen</translation>
    </message>
    <message id="night.getting_up">
        <source>Getting up</source>
        <extracomment>Night page, a very large area: notes that the person gets out of bed for a while.</extracomment>
        <translation>Ich stehe kurz auf</translation>
    </message>
    <message id="night.back_in_bed">
        <source>Back in bed</source>
        <extracomment>Night page, the same area later: notes that the person is in bed again.</extracomment>
        <translation>Wieder im Bett</translation>
    </message>
    <message id="night.cables_first">
        <source>Free the cables first, then walk</source>
        <extracomment>Night page, a caution under &quot;Getting up&quot;: cables can catch on the bed and trip the person.</extracomment>
        <translation>Erst Kabel frei, dann gehen</translation>
    </message>
    <message id="night.came_off">
        <source>Something came off</source>
        <extracomment>Night page, a very large area: notes that a part of the kit came off.</extracomment>
        <translation>Etwas hat sich gelöst</translation>
    </message>
    <message id="night.back_on">
        <source>It is back on</source>
        <extracomment>Night page, the same area later: notes that the part is in place again.</extracomment>
        <translation>Es ist wieder dran</translation>
    </message>
    <message id="night.what_should_i_do">
        <source>What should I do?</source>
        <extracomment>Night page, apart from what is noted: opens help for what to do right now.</extracomment>
        <translation>Was soll ich tun?</translation>
    </message>
    <message id="night.up_for_day">
        <source>Up for the day</source>
        <extracomment>Night page, smaller area: ends the night. It asks once more before it does.</extracomment>
        <translation>Endgültig aufstehen</translation>
    </message>
    <message id="night.up_confirm_title">
        <source>Are you up for the day?</source>
        <extracomment>Night page, asked once more before the night ends.</extracomment>
        <translation>Stehen Sie endgültig auf?</translation>
    </message>
    <message id="night.up_confirm_yes">
        <source>Yes, end the night</source>
        <extracomment>Night page, answer: the night ends now and the morning page comes.</extracomment>
        <translation>Ja, Nacht beenden</translation>
    </message>
    <message id="night.up_confirm_no">
        <source>No, go on with the night</source>
        <extracomment>Night page, answer: the night goes on.</extracomment>
        <translation>Nein, Nacht geht weiter</translation>
    </message>
    <message id="night.which_title">
        <source>What came off?</source>
        <extracomment>Night page, asked so that the part can be noted.</extracomment>
        <translation>Was hat sich gelöst?</translation>
    </message>
    <message id="night.which_none">
        <source>None of these</source>
        <extracomment>Night page, answer under the pictures of the parts.</extracomment>
        <translation>Nichts davon</translation>
    </message>
    <message id="night.still_on_title">
        <source>Is everything still on?</source>
        <extracomment>Night page, asked once when the person is back in bed.</extracomment>
        <translation>Sitzt noch alles?</translation>
    </message>
    <message id="night.still_on_yes">
        <source>Yes, all on</source>
        <extracomment>Night page, answer: every part of the kit is in place.</extracomment>
        <translation>Ja, alles sitzt</translation>
    </message>
    <message id="night.still_on_no">
        <source>Something is off</source>
        <extracomment>Night page, answer: a part of the kit is off; the next page asks which.</extracomment>
        <translation>Etwas hat sich gelöst</translation>
    </message>
    <message id="night.help_title">
        <source>What is it?</source>
        <extracomment>Night page, heading of the help for right now.</extracomment>
        <translation>Worum geht es?</translation>
    </message>
    <message id="night.undo">
        <source>Undo</source>
        <extracomment>Night page, button: takes back what was just noted.</extracomment>
        <translation>Rückgängig</translation>
    </message>
    <message id="night.close">
        <source>Close, go dark</source>
        <extracomment>Night page, button: leaves this page; the screen goes dark.</extracomment>
        <translation>Wieder dunkel</translation>
    </message>
    <message id="night.ok">
        <source>OK</source>
        <extracomment>Night page, button under advice: the person has read it; the screen goes dark.</extracomment>
        <translation>OK</translation>
    </message>
    <message id="panel.close">
        <source>Close this and go on</source>
        <extracomment>Button under a larger picture or an explanation: closes it and shows the page again.</extracomment>
        <translation>Schließen und weiter</translation>
    </message>
    <message id="common.more_below">
        <source>More below ↓</source>
        <extracomment>Button below a page that is longer than the screen: moves the page up to show the rest.</extracomment>
        <translation>Unten mehr ↓</translation>
    </message>
    <message id="common.to_top">
        <source>Back to the top ↑</source>
        <extracomment>Button below a long page when its end is shown: moves back to the top of the page.</extracomment>
        <translation>Nach oben ↑</translation>
    </message>
    <message id="step.right_when">
        <source>It is right when</source>
        <extracomment>Small heading over the sentence that tells how to know the step is done right.</extracomment>
        <translation>Es ist richtig, wenn</translation>
    </message>
    <message id="night.wake">
        <source>Wake the page</source>
        <extracomment>Dark night page, read by screen readers: touching anywhere shows the page.</extracomment>
        <translation>Seite wecken</translation>
    </message>
    <message id="step.trouble">
        <source>This isn&apos;t working</source>
        <extracomment>Button on each step: opens questions that help when the step does not work out.</extracomment>
        <translation>Das klappt nicht</translation>
    </message>
    <message id="step.why">
        <source>Why this?</source>
        <extracomment>Small button on a step: explains why this part is needed.</extracomment>
        <translation>Warum?</translation>
    </message>
    <message id="step.say_again">
        <source>Say it again</source>
        <extracomment>Small button on a step: reads the page aloud once more.</extracomment>
        <translation>Noch einmal sagen</translation>
    </message>
    <message id="step.no_sound">
        <source>Why no sound?</source>
        <extracomment>Small button in place of &quot;Say it again&quot; when there is no sound: explains why.</extracomment>
        <translation>Warum kein Ton?</translation>
    </message>
    <message id="common.change">
        <source>Change</source>
        <extracomment>Button beside an answer: opens it to change it.</extracomment>
        <translation>Ändern</translation>
    </message>
    <message id="common.remove">
        <source>Remove</source>
        <extracomment>Button beside an event of the night: takes it off the list.</extracomment>
        <translation>Entfernen</translation>
    </message>
    <message id="question.skip">
        <source>Skip this question</source>
        <extracomment>Button on each question: leaves the question without an answer.</extracomment>
        <translation>Frage auslassen</translation>
    </message>
    <message id="check.yes">
        <source>Yes</source>
        <extracomment>Sensor check, answer: this sensor is as it should be.</extracomment>
        <translation>Ja</translation>
    </message>
    <message id="check.not_right">
        <source>Not right</source>
        <extracomment>Sensor check, answer: this sensor is not as it should be; opens help for it.</extracomment>
        <translation>Stimmt nicht</translation>
    </message>
    <message id="time.how_sure">
        <source>How sure are you?</source>
        <extracomment>Heading over four answers: exactly, about, between two times, not sure.</extracomment>
        <translation>Wie sicher sind Sie?</translation>
    </message>
    <message id="time.exact">
        <source>Exactly then</source>
        <extracomment>How sure the person is of a time: to the minute.</extracomment>
        <translation>Genau dann</translation>
    </message>
    <message id="time.about">
        <source>About then</source>
        <extracomment>How sure the person is of a time: give or take some minutes.</extracomment>
        <translation>Ungefähr dann</translation>
    </message>
    <message id="time.between">
        <source>Between two times</source>
        <extracomment>How sure the person is of a time: it lay between two times.</extracomment>
        <translation>Zwischen 2 Zeiten</translation>
    </message>
    <message id="time.unsure">
        <source>I am not sure</source>
        <extracomment>How sure the person is of a time: they do not know it.</extracomment>
        <translation>Ich weiß es nicht</translation>
    </message>
    <message id="time.minus_hour">
        <source>− 1 h</source>
        <extracomment>Button: sets the time 1 hour earlier.</extracomment>
        <translation>− 1 Std.</translation>
    </message>
    <message id="time.minus_ten">
        <source>− 10 min</source>
        <extracomment>Button: sets the time 10 minutes earlier.</extracomment>
        <translation>− 10 Min.</translation>
    </message>
    <message id="time.minus_one">
        <source>− 1 min</source>
        <extracomment>Button: sets the time 1 minute earlier.</extracomment>
        <translation>− 1 Min.</translation>
    </message>
    <message id="time.plus_hour">
        <source>+ 1 h</source>
        <extracomment>Button: sets the time 1 hour later.</extracomment>
        <translation>+ 1 Std.</translation>
    </message>
    <message id="time.plus_ten">
        <source>+ 10 min</source>
        <extracomment>Button: sets the time 10 minutes later.</extracomment>
        <translation>+ 10 Min.</translation>
    </message>
    <message id="time.plus_one">
        <source>+ 1 min</source>
        <extracomment>Button: sets the time 1 minute later.</extracomment>
        <translation>+ 1 Min.</translation>
    </message>
    <message id="call.heading">
        <source>Call your clinic</source>
        <extracomment>Small heading over the clinic&apos;s phone number.</extracomment>
        <translation>Ihre Klinik anrufen</translation>
    </message>
    <message id="finished.questions">
        <source>Questions? Call your clinic</source>
        <extracomment>Small heading over the clinic&apos;s number at the end.</extracomment>
        <translation>Fragen? Ihre Klinik anrufen</translation>
    </message>
    <message id="first.none">
        <source>None of these</source>
        <extracomment>First page of questions, answer: none of the conditions listed is true for me.</extracomment>
        <translation>Nichts davon</translation>
    </message>
    <message id="first.some">
        <source>One or more of these</source>
        <extracomment>First page of questions, answer: one or more of the conditions listed is true for me.</extracomment>
        <translation>Eines oder mehr davon</translation>
    </message>
    <message id="help.works_now">
        <source>It works now</source>
        <extracomment>Help page, button under advice: the trouble is gone, go on with the step.</extracomment>
        <translation>Jetzt klappt es</translation>
    </message>
    <message id="help.still_not">
        <source>Still not right</source>
        <extracomment>Help page, button under advice: the trouble is still there; leads to more help.</extracomment>
        <translation>Klappt noch nicht</translation>
    </message>
    <message id="help.or_call">
        <source>Or call your clinic</source>
        <extracomment>Small heading over the clinic&apos;s number on the help page.</extracomment>
        <translation>Oder Ihre Klinik anrufen</translation>
    </message>
    <message id="light.different">
        <source>It looks different</source>
        <extracomment>Light page, button: the recorder&apos;s light looks like none of those shown; opens help.</extracomment>
        <translation>Sieht anders aus</translation>
    </message>
    <message id="puzzle.leave">
        <source>Leave both as they are</source>
        <extracomment>Two answers do not fit: keeps both as they are, for the clinic to see.</extracomment>
        <translation>Beide so lassen</translation>
    </message>
    <message id="puzzle.change">
        <source>Change this one</source>
        <extracomment>Two answers do not fit: opens this one of the two to change it.</extracomment>
        <translation>Diese ändern</translation>
    </message>
    <message id="skin.fine">
        <source>My skin is fine</source>
        <extracomment>Skin check, answer: the skin under the tape looks and feels as usual.</extracomment>
        <translation>Haut ist in Ordnung</translation>
    </message>
    <message id="skin.hurt">
        <source>It is red or it hurts</source>
        <extracomment>Skin check, answer: the skin under the tape is not as usual; leads to what to do.</extracomment>
        <translation>Sie ist rot oder tut weh</translation>
    </message>
    <message id="time.not_before">
        <source>Not before</source>
        <extracomment>Heading over the earlier of two times: it was not before this.</extracomment>
        <translation>Frühestens</translation>
    </message>
    <message id="time.not_after">
        <source>Not after</source>
        <extracomment>Heading over the later of two times: it was not after this.</extracomment>
        <translation>Spätestens</translation>
    </message>
    <message id="time.width_less">
        <source>5 min less</source>
        <extracomment>Button beside &quot;give or take 15 minutes&quot;: makes the span 5 minutes smaller.</extracomment>
        <translation>5 Min. weniger</translation>
    </message>
    <message id="time.width_more">
        <source>5 min more</source>
        <extracomment>Button beside &quot;give or take 15 minutes&quot;: makes the span 5 minutes larger.</extracomment>
        <translation>5 Min. mehr</translation>
    </message>
    <message id="trouble.call">
        <source>Call your clinic if you need help</source>
        <extracomment>Small heading over the clinic&apos;s number on a page that says the app is in trouble.</extracomment>
        <translation>Hilfe nötig? Ihre Klinik anrufen</translation>
    </message>
    <message id="trouble.for_staff">
        <source>For the clinic&apos;s staff</source>
        <extracomment>Small heading over a technical message that only the clinic&apos;s staff needs.</extracomment>
        <translation>Für das Personal der Klinik</translation>
    </message>
    <message id="main.right">
        <source>That is right</source>
        <extracomment>Button: the time that the night notes say is right.</extracomment>
        <translation>Das stimmt</translation>
    </message>
    <message id="unit.minutes">
        <source>minutes</source>
        <extracomment>Unit beside a number.</extracomment>
        <translation>Minuten</translation>
    </message>
    <message id="answer.give_or_take">
        <source>give or take %1 minutes</source>
        <extracomment>How sure a time is. %1: minutes.</extracomment>
        <translation>bis zu %1 Minuten früher oder später</translation>
    </message>
    <message id="event.add_awake">
        <source>Add a time awake</source>
        <extracomment>Button: note one more time awake in the night.</extracomment>
        <translation>Wachzeit eintragen</translation>
    </message>
    <message id="event.add_off">
        <source>Add something that came off</source>
        <extracomment>Button: note one more part that came off.</extracomment>
        <translation>Gelöstes Teil eintragen</translation>
    </message>
    <message id="event.awake_from">
        <source>When did you wake up?</source>
        <extracomment>Question about one time awake.</extracomment>
        <translation>Wann sind Sie aufgewacht?</translation>
    </message>
    <message id="event.awake_to">
        <source>When did you fall asleep again?</source>
        <extracomment>Question about the same time awake.</extracomment>
        <translation>Wann sind Sie wieder eingeschlafen?</translation>
    </message>
    <message id="event.off_from">
        <source>When did it come off: %1?</source>
        <extracomment>Question. %1: name of a part, such as &quot;finger clip&quot;.</extracomment>
        <translation>Wann hat sich das gelöst: %1?</translation>
    </message>
    <message id="event.off_to">
        <source>When was it back on: %1?</source>
        <extracomment>Question. %1: name of a part.</extracomment>
        <translation>Wann war das wieder dran: %1?</translation>
    </message>
    <message id="event.off_end">
        <source>Did you put it back on: %1?</source>
        <extracomment>Question with two answers. %1: name of a part.</extracomment>
        <translation>Haben Sie das wieder angebracht: %1?</translation>
    </message>
    <message id="event.off_end.yes">
        <source>Yes, I put it back on</source>
        <extracomment>Answer: it was put back on.</extracomment>
        <translation>Ja, wieder angebracht</translation>
    </message>
    <message id="event.off_end.no">
        <source>No, it stayed off</source>
        <extracomment>Answer: it stayed off.</extracomment>
        <translation>Nein, es blieb ab</translation>
    </message>
    <message id="result.only_half">
        <source>a half</source>
        <extracomment>Half an hour and nothing more, in &quot;about %1 hours&quot;.</extracomment>
        <translation>½</translation>
    </message>
    <message id="result.picture_text">
        <source>Picture of the night: one row for each part, and one for sleep</source>
        <extracomment>The picture of the night, for screen readers. The same is said in words above it.</extracomment>
        <translation>Bild der Nacht: eine Zeile für jedes Teil und eine für den Schlaf</translation>
    </message>
    <message id="skin.question">
        <source>How does your skin look?</source>
        <extracomment>Question about the skin where tape was.</extracomment>
        <translation>Wie sieht Ihre Haut aus?</translation>
    </message>
    <message id="trouble.again">
        <source>Try again</source>
        <extracomment>Button on a page of trouble: try once more.</extracomment>
        <translation>Neu versuchen</translation>
    </message>
    <message id="step.no_voice">
        <source>There is no voice on this tablet. All the words are on the page.</source>
        <oldsource>No voice on this tablet</oldsource>
        <extracomment>Said where the voice would be, when there is none.</extracomment>
        <translation>Auf diesem Tablet gibt es keine Stimme. Alle Worte stehen auf der Seite.</translation>
    </message>
    <message id="welcome.title">
        <source>Tonight: your sleep test at home</source>
        <extracomment>Title of the first page in the evening.</extracomment>
        <translation>Heute Nacht: Ihr Schlaftest zu Hause</translation>
    </message>
    <message id="welcome.body">
        <source>Start about 30 minutes before bed. This page goes with you, step by step.</source>
        <extracomment>First page, under the title: when to begin and what this page does.</extracomment>
        <translation>Fangen Sie etwa 30 Minuten vor dem Schlafengehen an. Diese Seite führt Sie Schritt für Schritt.</translation>
    </message>
    <message id="welcome.code">
        <source>Study code %1</source>
        <extracomment>First page, small. %1 is the study code, such as SM-0417.</extracomment>
        <translation>Code des Schlaftests: %1</translation>
    </message>
    <message id="welcome.night">
        <source>Night %1 of %2</source>
        <extracomment>First page, small, when the kit is used for more than one night. %1 is the night, %2 how many there are.</extracomment>
        <translation>Nacht %1 von %2</translation>
    </message>
    <message id="first.title">
        <source>Before you start</source>
        <extracomment>Title of the page with questions that the clinic must know about.</extracomment>
        <translation>Bevor Sie anfangen</translation>
    </message>
    <message id="first.intro">
        <source>Is one of these true for you?</source>
        <extracomment>Stands over a list; each line of the list completes it.</extracomment>
        <translation>Trifft etwas davon auf Sie zu?</translation>
    </message>
    <message id="first.condition.tape_allergy">
        <source>I am allergic to tape</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation>Ich bin allergisch gegen Pflaster</translation>
    </message>
    <message id="first.condition.broken_skin">
        <source>My skin is sore or broken where tape or pads go</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation>Meine Haut ist wund oder verletzt, wo Pflaster oder Elektroden hinkommen</translation>
    </message>
    <message id="first.condition.oxygen">
        <source>I use oxygen or a breathing machine</source>
        <extracomment>Line in the list. The machine may be CPAP or a ventilator.</extracomment>
        <translation>Ich nutze Sauerstoff oder ein Atemgerät, zum Beispiel mit Maske</translation>
    </message>
    <message id="first.condition.implant">
        <source>I have a pacemaker or another implant</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation>Ich habe einen Herzschrittmacher oder ein anderes Implantat</translation>
    </message>
    <message id="first.condition.under_18">
        <source>I am under 18</source>
        <extracomment>Line in the list: the person&apos;s age in years.</extracomment>
        <translation>Ich bin unter 18</translation>
    </message>
    <message id="first.condition.pregnant">
        <source>I am pregnant</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation>Ich bin schwanger</translation>
    </message>
    <message id="first.condition.latex">
        <source>I am allergic to latex</source>
        <extracomment>Line in the list &quot;Is one of these true for you?&quot;.</extracomment>
        <translation>Ich bin allergisch gegen Latex</translation>
    </message>
    <message id="first.condition.cords">
        <source>Someone in my bed could get caught in cords: a small child, or a person who gets confused</source>
        <extracomment>Line in the list: someone in the bed who could get caught in cables and tubes.</extracomment>
        <translation>In meinem Bett kann sich jemand in Kabeln oder Schläuchen verfangen: ein kleines Kind oder ein verwirrter Mensch</translation>
    </message>
    <message id="call.title">
        <source>Call your clinic before you go on</source>
        <extracomment>Title of the page that follows when one of the conditions is true.</extracomment>
        <translation>Erst Ihre Klinik anrufen, dann weiter</translation>
    </message>
    <message id="call.body">
        <source>Tell them what is true for you. They decide if you can use the kit tonight. Do not change your treatment on your own.</source>
        <extracomment>Under that title. The clinic decides; the person changes nothing on their own.</extracomment>
        <translation>Sagen Sie dort, was auf Sie zutrifft. Die Klinik entscheidet, ob Sie das Set heute Nacht benutzen können. Ändern Sie Ihre Behandlung nicht selbst.</translation>
    </message>
    <message id="call.outside_hours">
        <source>When the clinic is closed</source>
        <extracomment>Small heading over a second phone number.</extracomment>
        <translation>Wenn die Klinik geschlossen ist</translation>
    </message>
    <message id="call.emergency">
        <source>Chest pain, severe trouble breathing or fainting: take the kit off and call %1.</source>
        <extracomment>Caution. %1 is the local emergency number.</extracomment>
        <translation>Bei Brustschmerz, schwerer Atemnot oder Ohnmacht: Nehmen Sie das Set ab und rufen Sie %1 an.</translation>
    </message>
    <message id="call.go_on">
        <source>I called. Go on</source>
        <extracomment>Button: the person has called the clinic and may go on.</extracomment>
        <translation>Angerufen. Weiter</translation>
    </message>
    <message id="call.hours">
        <source>Open: %1</source>
        <extracomment>Opening hours of the clinic. %1 is days and times, such as &quot;Mon - Fri: 8:00 AM - 5:00 PM&quot;.</extracomment>
        <translation>Geöffnet: %1</translation>
    </message>
    <message id="kit.title">
        <source>See that everything is here</source>
        <extracomment>Title of the list of what is in the bag.</extracomment>
        <translation>Prüfen, ob alles da ist</translation>
    </message>
    <message id="kit.body">
        <source>Lay the parts on a table or on the bed. Compare them with the pictures. Somebody who helps you is welcome.</source>
        <oldsource>Lay the parts on a table or on the bed. Compare them with the pictures.</oldsource>
        <extracomment>Under that title.</extracomment>
        <translation>Legen Sie die Teile auf einen Tisch oder auf das Bett. Vergleichen Sie sie mit den Bildern. Wer Ihnen hilft, ist willkommen.</translation>
    </message>
    <message id="kit.all_here">
        <source>Everything is here</source>
        <extracomment>Button: nothing is missing.</extracomment>
        <translation>Alles ist da</translation>
    </message>
    <message id="kit.missing">
        <source>Something is missing</source>
        <extracomment>Button: leads to the clinic&apos;s number.</extracomment>
        <translation>Etwas fehlt</translation>
    </message>
    <message id="item.tape_roll">
        <source>roll of tape</source>
        <extracomment>A thing in the bag, lower case.</extracomment>
        <translation>Rolle Pflaster</translation>
    </message>
    <message id="item.pouch">
        <source>pouch</source>
        <extracomment>A thing in the bag, lower case: a soft pouch that holds the kit.</extracomment>
        <translation>Beutel</translation>
    </message>
    <message id="item.charger">
        <source>charger</source>
        <extracomment>A thing in the bag, lower case.</extracomment>
        <translation>Ladegerät</translation>
    </message>
    <message id="item.return_box">
        <source>return box</source>
        <extracomment>A thing in the bag, lower case: the box in which the kit goes back.</extracomment>
        <translation>Karton für die Rückgabe</translation>
    </message>
    <message id="item.batteries">
        <source>batteries</source>
        <extracomment>A thing in the bag, lower case.</extracomment>
        <translation>Batterien</translation>
    </message>
    <message id="item.leaflet">
        <source>leaflet</source>
        <extracomment>A thing in the bag, lower case: printed instructions.</extracomment>
        <translation>Anleitung</translation>
    </message>
    <message id="pace.on_time">
        <source>In bed by about %1 - on time</source>
        <extracomment>Under the drawn person. %1 is a time of day, the planned one.</extracomment>
        <translation>Im Bett gegen %1 Uhr – pünktlich</translation>
    </message>
    <message id="pace.later">
        <source>In bed by about %1. That is fine.</source>
        <extracomment>Under the drawn person, when it gets later than planned. No blame. %1 is a time of day.</extracomment>
        <translation>Im Bett gegen %1 Uhr. Das ist in Ordnung.</translation>
    </message>
    <message id="pace.early">
        <source>In bed by about %1. No need to hurry.</source>
        <extracomment>Under the drawn person, when it goes faster than planned. %1 is a time of day.</extracomment>
        <translation>Im Bett gegen %1 Uhr. Keine Eile.</translation>
    </message>
    <message id="main.it_is_on">
        <source>It is on</source>
        <extracomment>Large button of a step: the part is on the body.</extracomment>
        <translation>Es sitzt</translation>
    </message>
    <message id="main.done">
        <source>Done</source>
        <extracomment>Large button of a step: it is done.</extracomment>
        <translation>Fertig</translation>
    </message>
    <message id="main.plugged">
        <source>It is plugged in</source>
        <extracomment>Large button of a step: the plug is in.</extracomment>
        <translation>Der Stecker ist drin</translation>
    </message>
    <message id="main.next">
        <source>Go on</source>
        <extracomment>Large button: go on to the next page.</extracomment>
        <translation>Weiter</translation>
    </message>
    <message id="main.switched">
        <source>I slid the switch</source>
        <extracomment>Large button of the step that turns the recorder on.</extracomment>
        <translation>Schalter ist geschoben</translation>
    </message>
    <message id="check.title">
        <source>Is each part right?</source>
        <extracomment>Title of the page on which each sensor is looked at once more.</extracomment>
        <translation>Sitzt jedes Teil richtig?</translation>
    </message>
    <message id="check.body">
        <source>Look at each part in turn. Tap Yes if it is right.</source>
        <extracomment>Under that title. &quot;Yes&quot; is the button beside each part.</extracomment>
        <translation>Sehen Sie sich ein Teil nach dem anderen an. Tippen Sie auf „Ja“, wenn es richtig sitzt.</translation>
    </message>
    <message id="check.effort_belt.expect">
        <source>Flat and snug, and 2 fingers fit under it</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Flach und anliegend, 2 Finger passen darunter</translation>
    </message>
    <message id="check.effort_sensor.expect">
        <source>Snapped on to the belt on both sides</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Auf beiden Seiten am Gurt eingerastet</translation>
    </message>
    <message id="check.recorder.expect">
        <source>Held tight, with all plugs in</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Sitzt fest, alle Stecker sind drin</translation>
    </message>
    <message id="check.nasal_cannula.expect">
        <source>Prongs in the nose, tube over the ears, loose enough to swallow</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Röhrchen in der Nase, Schlauch über den Ohren, locker genug zum Schlucken</translation>
    </message>
    <message id="check.breath_sensor.expect">
        <source>Above the lip, and its tips touch no skin</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Über der Lippe, die Spitzen berühren keine Haut</translation>
    </message>
    <message id="check.finger_probe.expect">
        <source>Nail up, finger all the way in, cable flat</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Nagel oben, Finger ganz im Clip, Kabel flach</translation>
    </message>
    <message id="check.ecg_electrodes.expect">
        <source>Both pads stick flat all around</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Beide Elektroden kleben rundum flach</translation>
    </message>
    <message id="check.body_position_sensor.expect">
        <source>In the middle, with the arrow to your head</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>In der Mitte, der Pfeil zeigt zum Kopf</translation>
    </message>
    <message id="check.snore_microphone.expect">
        <source>Flat on the side of your neck</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Flach, seitlich am Hals</translation>
    </message>
    <message id="check.leg_electrodes.expect">
        <source>Both pads stick flat, and the cable has slack</source>
        <extracomment>How a part looks or feels when it is right; stands beside its name and picture.</extracomment>
        <translation>Beide Elektroden kleben flach, das Kabel liegt locker</translation>
    </message>
    <message id="check.all_right">
        <source>All parts are right</source>
        <extracomment>Large button: every part was looked at and is right.</extracomment>
        <translation>Alle Teile sitzen richtig</translation>
    </message>
    <message id="light.title">
        <source>What does the light do?</source>
        <extracomment>Title of the page on which the person says what the recorder&apos;s light does.</extracomment>
        <translation>Was macht das Lämpchen?</translation>
    </message>
    <message id="light.body">
        <source>Look at the light on the recorder. It may take %1 seconds. Then tap what you see.</source>
        <extracomment>Under that title. %1 is a number of seconds.</extracomment>
        <translation>Sehen Sie auf das Lämpchen am Rekorder. Es kann %1 Sekunden dauern, bis es angeht. Tippen Sie dann an, was Sie sehen.</translation>
    </message>
    <message id="light.look.dark">
        <source>The light stays dark</source>
        <extracomment>A way the light can look: it does not shine.</extracomment>
        <translation>Das Lämpchen bleibt dunkel</translation>
    </message>
    <message id="light.look.steady">
        <source>The %1 light stays on</source>
        <extracomment>A way the light can look. %1 is a colour, such as &quot;green&quot;.</extracomment>
        <translation>Das Lämpchen leuchtet dauernd %1</translation>
    </message>
    <message id="light.look.one_short">
        <source>The %1 light: 1 short blink, then a pause</source>
        <extracomment>A way the light can look. %1 is a colour.</extracomment>
        <translation>Das Lämpchen blinkt %1: 1&#xa0;Mal kurz, dann Pause</translation>
    </message>
    <message id="light.look.short">
        <source>The %1 light: %2 short blinks, then a pause</source>
        <extracomment>A way the light can look. %1 is a colour, %2 a number from 2 on.</extracomment>
        <translation>Das Lämpchen blinkt %1: %2&#xa0;Mal kurz, dann Pause</translation>
    </message>
    <message id="light.look.long">
        <source>The %1 light: 1 long blink, again and again</source>
        <extracomment>A way the light can look. %1 is a colour.</extracomment>
        <translation>Das Lämpchen blinkt %1: 1&#xa0;Mal lang, immer wieder</translation>
    </message>
    <message id="light.look.even">
        <source>The %1 light blinks evenly</source>
        <extracomment>A way the light can look: on and off for the same time. %1 is a colour.</extracomment>
        <translation>Das Lämpchen blinkt %1: gleichmäßig an und aus</translation>
    </message>
    <message id="colour.white">
        <source>white</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation>weiß</translation>
    </message>
    <message id="colour.green">
        <source>green</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation>grün</translation>
    </message>
    <message id="colour.amber">
        <source>amber</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;. An orange yellow.</extracomment>
        <translation>orange</translation>
    </message>
    <message id="colour.red">
        <source>red</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation>rot</translation>
    </message>
    <message id="colour.blue">
        <source>blue</source>
        <extracomment>Colour of a light, lower case. Stands alone and in &quot;The %1 light stays on&quot;.</extracomment>
        <translation>blau</translation>
    </message>
    <message id="light.then.go_on">
        <source>The recorder is recording. You can go to bed.</source>
        <extracomment>Said when the light that was tapped means that all is well.</extracomment>
        <translation>Der Rekorder zeichnet auf. Sie können ins Bett gehen.</translation>
    </message>
    <message id="light.then.check_plugs">
        <source>Push each plug in once more. Then look at the light again.</source>
        <extracomment>Said when the light that was tapped means that a plug may be loose.</extracomment>
        <translation>Drücken Sie jeden Stecker noch einmal fest hinein. Sehen Sie dann wieder auf das Lämpchen.</translation>
    </message>
    <message id="light.then.start_again">
        <source>Go back 1 page and start the recorder once more. Then look at the light again.</source>
        <extracomment>Said when the light that was tapped means that the recorder did not start.</extracomment>
        <translation>Gehen Sie 1 Seite zurück und starten Sie den Rekorder noch einmal. Sehen Sie dann wieder auf das Lämpchen.</translation>
    </message>
    <message id="light.then.call_clinic">
        <source>Call your clinic. Tap &quot;It looks different&quot; to see the number.</source>
        <extracomment>Said when the light that was tapped needs the clinic. &quot;It looks different&quot; is the button on the page that leads to the number.</extracomment>
        <translation>Rufen Sie Ihre Klinik an. Tippen Sie auf „Sieht anders aus“, dann sehen Sie die Nummer.</translation>
    </message>
    <message id="light.recording_button">
        <source>It is recording. Go on</source>
        <extracomment>Large button: the light shows that it is recording.</extracomment>
        <translation>Er zeichnet auf. Weiter</translation>
    </message>
    <message id="bed.title">
        <source>Lights out</source>
        <extracomment>Title of the last page before the night.</extracomment>
        <translation>Licht aus</translation>
    </message>
    <message id="bed.line.bathroom">
        <source>Bathroom? Go now. Free the cables first, then walk.</source>
        <oldsource>Do you need the bathroom? Go now. Free the cables first, then walk.</oldsource>
        <extracomment>Line on the page before the night.</extracomment>
        <translation>Toilette? Gehen Sie jetzt. Erst die Kabel frei machen, dann gehen.</translation>
    </message>
    <message id="bed.line.phone">
        <source>Put your phone away from your pillow, but within reach.</source>
        <extracomment>Line on the page before the night: where the phone should be.</extracomment>
        <translation>Legen Sie Ihr Telefon weg vom Kissen, aber in Reichweite.</translation>
    </message>
    <message id="bed.line.pets">
        <source>Keep pets and children out of the bed and off the cables.</source>
        <oldsource>Keep pets and children out of the bed and away from the cables.</oldsource>
        <extracomment>Line on the page before the night, a caution.</extracomment>
        <translation>Halten Sie Tiere und Kinder vom Bett und von den Kabeln fern.</translation>
    </message>
    <message id="bed.line.tablet">
        <source>Leave the tablet beside the bed, on its charger.</source>
        <extracomment>Line on the page before the night.</extracomment>
        <translation>Lassen Sie das Tablet neben dem Bett am Ladegerät.</translation>
    </message>
    <message id="bed.line.touch">
        <source>Touch the dark page once to wake it. Then tap to note.</source>
        <oldsource>Touch the dark page once to wake it. Then tap what you want to note.</oldsource>
        <extracomment>Line on the page before the night: how the dark page works.</extracomment>
        <translation>Berühren Sie die dunkle Seite, um sie zu wecken. Dann tippen und notieren.</translation>
    </message>
    <message id="bed.caution">
        <source>Nobody is watching you tonight. Chest pain, severe trouble breathing or fainting: take the kit off and call %1.</source>
        <extracomment>Caution on the page before the night. %1 is the local emergency number.</extracomment>
        <translation>Heute Nacht überwacht Sie niemand. Bei Brustschmerz, schwerer Atemnot oder Ohnmacht: Nehmen Sie das Set ab und rufen Sie %1 an.</translation>
    </message>
    <message id="bed.main">
        <source>Lights out now</source>
        <extracomment>Large button: the light goes out now and the page goes dark.</extracomment>
        <translation>Jetzt Licht aus</translation>
    </message>
    <message id="night.watch">
        <source>Nobody is watching. Chest pain, severe trouble breathing or fainting: take the kit off and call %1.</source>
        <extracomment>On every night page. %1 is the local emergency number. Short.</extracomment>
        <translation>Niemand überwacht Sie. Brustschmerz, schwere Atemnot, Ohnmacht: Set abnehmen, %1 anrufen.</translation>
    </message>
    <message id="noted.awake">
        <source>Noted: awake</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation>Notiert: wach</translation>
    </message>
    <message id="noted.asleep">
        <source>Noted: going back to sleep</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation>Notiert: weiterschlafen</translation>
    </message>
    <message id="noted.up">
        <source>Noted: getting up</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation>Notiert: kurz aufstehen</translation>
    </message>
    <message id="noted.back">
        <source>Noted: back in bed</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation>Notiert: wieder im Bett</translation>
    </message>
    <message id="noted.off">
        <source>Noted: %1 is off</source>
        <extracomment>Answer to a tap at night; says what was noted. %1 is a part, such as &quot;finger clip&quot;.</extracomment>
        <translation>Notiert. Gelöst: %1</translation>
    </message>
    <message id="noted.on">
        <source>Noted: %1 is back on</source>
        <extracomment>Answer to a tap at night; says what was noted. %1 is a part, such as &quot;finger clip&quot;.</extracomment>
        <translation>Notiert. Wieder dran: %1</translation>
    </message>
    <message id="noted.all_on">
        <source>Noted: everything is still on</source>
        <extracomment>Answer to a tap at night; says what was noted.</extracomment>
        <translation>Notiert: alles sitzt noch</translation>
    </message>
    <message id="noted.undone">
        <source>Taken back: the last note</source>
        <extracomment>Answer to &quot;Undo&quot; at night: the last note is taken back.</extracomment>
        <translation>Rückgängig gemacht: die letzte Notiz</translation>
    </message>
    <message id="night.which.off">
        <source>What came off?</source>
        <extracomment>Heading over pictures of the parts.</extracomment>
        <translation>Was hat sich gelöst?</translation>
    </message>
    <message id="night.which.on">
        <source>What is back on?</source>
        <extracomment>Heading over pictures of the parts that are off.</extracomment>
        <translation>Was ist wieder dran?</translation>
    </message>
    <message id="night.still_on">
        <source>Is everything still on?</source>
        <extracomment>Asked once when the person is back in bed.</extracomment>
        <translation>Sitzt noch alles?</translation>
    </message>
    <message id="night.up_confirm">
        <source>Up for the day?</source>
        <extracomment>Asked before the night ends.</extracomment>
        <translation>Stehen Sie endgültig auf?</translation>
    </message>
    <message id="night.help.title">
        <source>What should I do?</source>
        <extracomment>Heading of the help at night.</extracomment>
        <translation>Was soll ich tun?</translation>
    </message>
    <message id="night.help.off">
        <source>Something came off</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation>Etwas hat sich gelöst</translation>
    </message>
    <message id="night.help.light">
        <source>The light looks wrong</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation>Das Lämpchen sieht falsch aus</translation>
    </message>
    <message id="night.help.light.advice">
        <source>Push each plug in once more and look again. Still wrong? Call the number below, or keep the kit on and sleep.</source>
        <extracomment>Advice at night, after the choice before this one. The clinic&apos;s number for the time when it is closed stands below.</extracomment>
        <translation>Drücken Sie jeden Stecker noch einmal fest hinein und sehen Sie wieder hin. Stimmt es noch nicht? Rufen Sie die Nummer unten an. Oder lassen Sie das Set an und schlafen Sie.</translation>
    </message>
    <message id="night.help.skin">
        <source>My skin itches or hurts</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation>Meine Haut juckt oder tut weh</translation>
    </message>
    <message id="night.help.skin.advice">
        <source>Take that tape or part off slowly and leave it off. If your face swells or you cannot breathe well, call %1.</source>
        <extracomment>Advice at night, after the choice before this one. The clinic&apos;s number for the time when it is closed stands below. %1 is the local emergency number.</extracomment>
        <translation>Nehmen Sie dieses Pflaster oder Teil langsam ab und lassen Sie es ab. Wenn Ihr Gesicht anschwillt oder Sie schlecht Luft bekommen, rufen Sie %1 an.</translation>
    </message>
    <message id="night.help.unwell">
        <source>I feel ill</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation>Mir geht es schlecht</translation>
    </message>
    <message id="night.help.unwell.advice">
        <source>Nobody is watching. Chest pain, severe trouble breathing or fainting: take the kit off and call %1 now.</source>
        <extracomment>Advice at night after &quot;I feel ill&quot;. %1 is the local emergency number, which also stands below.</extracomment>
        <translation>Niemand überwacht Sie. Bei Brustschmerz, schwerer Atemnot oder Ohnmacht: Nehmen Sie das Set ab und rufen Sie jetzt %1 an.</translation>
    </message>
    <message id="night.help.stop">
        <source>I want to stop</source>
        <extracomment>Choice in the help at night, as the person would say it.</extracomment>
        <translation>Ich möchte aufhören</translation>
    </message>
    <message id="night.help.stop.advice">
        <source>You can stop at any time. Take tape off slowly, then the rest. Call your clinic in the morning. If you are very ill, call %1.</source>
        <extracomment>Advice at night, after the choice before this one. The clinic&apos;s number for the time when it is closed stands below. %1 is the local emergency number.</extracomment>
        <translation>Sie können jederzeit aufhören. Ziehen Sie erst die Pflaster langsam ab, dann nehmen Sie den Rest ab. Rufen Sie am Morgen Ihre Klinik an. Wenn es Ihnen sehr schlecht geht, rufen Sie %1 an.</translation>
    </message>
    <message id="night.refit.effort_belt">
        <source>Put the belt back. Breathe out and close it. 2 fingers should fit under it.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Legen Sie den Gurt wieder an. Atmen Sie aus und schließen Sie ihn. 2 Finger sollen darunter passen.</translation>
    </message>
    <message id="night.refit.effort_sensor">
        <source>Press the sensor on to the belt until both sides snap.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Drücken Sie den Sensor auf den Gurt, bis beide Seiten einrasten.</translation>
    </message>
    <message id="night.refit.recorder">
        <source>Fasten the recorder where it was. Push in any plug that is loose.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Befestigen Sie den Rekorder, wo er war. Drücken Sie lose Stecker wieder hinein.</translation>
    </message>
    <message id="night.refit.nasal_cannula">
        <source>Put the prongs in your nose and the tube over your ears. Slide the ring under your chin, loose enough to swallow.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Stecken Sie die Röhrchen in die Nase und legen Sie den Schlauch über die Ohren. Schieben Sie den Ring unter das Kinn, locker genug zum Schlucken.</translation>
    </message>
    <message id="night.refit.breath_sensor">
        <source>Push it back to the middle of the nose tube. Its tips touch no skin.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Schieben Sie ihn wieder in die Mitte vom Nasenschlauch. Die Spitzen berühren keine Haut.</translation>
    </message>
    <message id="night.refit.finger_probe">
        <source>Hold your nail side up and push the same finger all the way in.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Halten Sie den Nagel nach oben und schieben Sie denselben Finger ganz hinein.</translation>
    </message>
    <message id="night.refit.ecg_electrodes">
        <source>Dry the skin. Press the pad back on for 10 seconds.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Trocknen Sie die Haut. Drücken Sie die Elektrode 10 Sekunden lang wieder fest.</translation>
    </message>
    <message id="night.refit.body_position_sensor">
        <source>Fasten it in the middle of the chest belt, with the arrow to your head.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Befestigen Sie ihn mitten auf dem Brustgurt. Der Pfeil zeigt zum Kopf.</translation>
    </message>
    <message id="night.refit.snore_microphone">
        <source>Put it back on the side of your neck. Press the tape down. Keep the cable off your neck.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Setzen Sie ihn wieder seitlich an den Hals. Drücken Sie das Pflaster fest. Das Kabel darf nicht um den Hals liegen.</translation>
    </message>
    <message id="night.refit.leg_electrodes">
        <source>Dry the skin. Press the pads and the tape back on for 10 seconds.</source>
        <extracomment>Night: how to put a part back. After it comes: &quot;Now look at the recorder&apos;s light&quot;.</extracomment>
        <translation>Trocknen Sie die Haut. Drücken Sie Elektroden und Pflaster 10 Sekunden lang wieder fest.</translation>
    </message>
    <message id="night.look_light">
        <source>Now look at the recorder&apos;s light. Does it show that it is recording? If not, push each plug in once more.</source>
        <extracomment>Night: after a part was put back on.</extracomment>
        <translation>Sehen Sie jetzt auf das Lämpchen am Rekorder. Zeigt es, dass er aufzeichnet? Wenn nicht, drücken Sie jeden Stecker noch einmal fest hinein.</translation>
    </message>
    <message id="morning.title">
        <source>Good morning</source>
        <extracomment>Title of the first page in the morning.</extracomment>
        <translation>Guten Morgen</translation>
    </message>
    <message id="morning.body">
        <source>Leave the kit on for now. First come some short questions. Then you take it off, step by step.</source>
        <extracomment>Under that title: the kit stays on until the questions are done.</extracomment>
        <translation>Lassen Sie das Set noch an. Erst kommen ein paar kurze Fragen. Dann nehmen Sie es Schritt für Schritt ab.</translation>
    </message>
    <message id="q.into_bed.title">
        <source>When did you get into bed?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Wann sind Sie ins Bett gegangen?</translation>
    </message>
    <message id="q.into_bed.short">
        <source>Into bed</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Ins Bett</translation>
    </message>
    <message id="q.lights_out.title">
        <source>When did you put the light out to sleep?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Wann machten Sie zum Schlafen das Licht aus?</translation>
    </message>
    <message id="q.lights_out.short">
        <source>Lights out</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Licht aus</translation>
    </message>
    <message id="q.asleep_after.title">
        <source>How long after lights out did you sleep?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Licht aus: Wie lange bis zum Einschlafen?</translation>
    </message>
    <message id="q.asleep_after.short">
        <source>Time to fall asleep</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Zeit zum Einschlafen</translation>
    </message>
    <message id="q.awake.title">
        <source>Were you awake in the night?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Waren Sie in der Nacht wach?</translation>
    </message>
    <message id="q.awake.short">
        <source>Awake at night</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>In der Nacht wach</translation>
    </message>
    <message id="q.off.title">
        <source>Did any part come off in the night?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Hat sich in der Nacht ein Teil gelöst?</translation>
    </message>
    <message id="q.off.short">
        <source>Parts that came off</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Gelöste Teile</translation>
    </message>
    <message id="q.final_waking.title">
        <source>When was your final waking this morning?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Wann sind Sie heute endgültig aufgewacht?</translation>
    </message>
    <message id="q.final_waking.short">
        <source>Final waking</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Endgültig aufgewacht</translation>
    </message>
    <message id="q.lights_on.title">
        <source>When did you stop trying to sleep?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters. This is the time when the person turned the light on or gave up on more sleep.</extracomment>
        <translation>Wann wollten Sie nicht mehr weiterschlafen?</translation>
    </message>
    <message id="q.lights_on.short">
        <source>Lights on</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Licht an</translation>
    </message>
    <message id="q.out_of_bed.title">
        <source>When did you get up for the day?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Wann sind Sie endgültig aufgestanden?</translation>
    </message>
    <message id="q.out_of_bed.short">
        <source>Up for the day</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Endgültig aufgestanden</translation>
    </message>
    <message id="q.compare.title">
        <source>How was it next to your usual nights?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Wie war diese Nacht im Vergleich zu sonst?</translation>
    </message>
    <message id="q.compare.short">
        <source>Next to usual nights</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Im Vergleich zu sonst</translation>
    </message>
    <message id="q.comment.title">
        <source>What else should your clinic know?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters.</extracomment>
        <translation>Was soll Ihre Klinik noch wissen?</translation>
    </message>
    <message id="q.comment.short">
        <source>Your comment</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Ihr Kommentar</translation>
    </message>
    <message id="q.hint.notes">
        <source>Your night notes say %1.</source>
        <extracomment>Under a question. %1 is a time from what was tapped at night.</extracomment>
        <translation>In Ihren Notizen der Nacht steht: %1 Uhr.</translation>
    </message>
    <message id="q.hint.none">
        <source>We have no note of this.</source>
        <extracomment>Under a question: nothing was tapped about it.</extracomment>
        <translation>Dazu haben wir keine Notiz.</translation>
    </message>
    <message id="q.hint.forgot_back">
        <source>You noted getting up at %1, but not coming back to bed. When was that?</source>
        <extracomment>Under the question about being awake. %1 is a time.</extracomment>
        <translation>Sie haben notiert, dass Sie kurz aufstehen (%1). Wann Sie wieder im Bett waren, fehlt noch. Wann war das?</translation>
    </message>
    <message id="q.compare.better">
        <source>Better than usual</source>
        <extracomment>Answer about this night.</extracomment>
        <translation>Besser als sonst</translation>
    </message>
    <message id="q.compare.usual">
        <source>Like a usual night</source>
        <extracomment>Answer about this night.</extracomment>
        <translation>Wie sonst auch</translation>
    </message>
    <message id="q.compare.worse">
        <source>Worse than usual</source>
        <extracomment>Answer about this night.</extracomment>
        <translation>Schlechter als sonst</translation>
    </message>
    <message id="q.progress">
        <source>Question %1 of %2</source>
        <extracomment>Small line over a question. %1 is its number, %2 how many there are.</extracomment>
        <translation>Frage %1 von %2</translation>
    </message>
    <message id="q.none_awake">
        <source>No, I slept through</source>
        <extracomment>Answer to &quot;Were you awake in the night?&quot;.</extracomment>
        <translation>Nein, durchgeschlafen</translation>
    </message>
    <message id="q.none_off">
        <source>Nothing came off</source>
        <extracomment>Answer to &quot;Did any part come off in the night?&quot;.</extracomment>
        <translation>Nichts hat sich gelöst</translation>
    </message>
    <message id="answer.exact">
        <source>%1</source>
        <extracomment>An answer in the list of answers. %1 is a time.</extracomment>
        <translation>%1</translation>
    </message>
    <message id="answer.about">
        <source>About %1, give or take %2 min</source>
        <extracomment>An answer in the list of answers. %1 is a time, %2 a number of minutes.</extracomment>
        <translation>Etwa %1, bis zu %2 Min. früher oder später</translation>
    </message>
    <message id="answer.between">
        <source>Between %1 and %2</source>
        <extracomment>An answer in the list of answers. %1 and %2 are times.</extracomment>
        <translation>Zwischen %1 und %2</translation>
    </message>
    <message id="answer.minutes">
        <source>%1 min</source>
        <extracomment>An answer in the list of answers. %1 is a number of minutes.</extracomment>
        <translation>%1 Min.</translation>
    </message>
    <message id="answer.skipped">
        <source>Skipped</source>
        <extracomment>In the list of answers: the question was skipped.</extracomment>
        <translation>Ausgelassen</translation>
    </message>
    <message id="answer.unsure">
        <source>Not sure</source>
        <extracomment>In the list of answers: the person does not know.</extracomment>
        <translation>Weiß ich nicht</translation>
    </message>
    <message id="answer.none">
        <source>None</source>
        <extracomment>In the list of answers: there is nothing to tell.</extracomment>
        <translation>Nichts</translation>
    </message>
    <message id="answer.awake_from_to">
        <source>Awake %1 to %2</source>
        <extracomment>A time awake. %1 and %2 are times.</extracomment>
        <translation>Wach von %1 bis %2</translation>
    </message>
    <message id="answer.awake_from">
        <source>Awake from %1, about %2 min</source>
        <extracomment>A time awake. %1 is a time, %2 a number of minutes.</extracomment>
        <translation>Wach ab %1, etwa %2 Min.</translation>
    </message>
    <message id="answer.off_from_to">
        <source>%1: off %2 to %3</source>
        <extracomment>A part that came off. %1 is the part, %2 and %3 are times.</extracomment>
        <translation>%1: gelöst von %2 bis %3</translation>
    </message>
    <message id="answer.off_from">
        <source>%1: off from %2</source>
        <extracomment>A part that came off and stayed off. %1 is the part, %2 a time.</extracomment>
        <translation>%1: gelöst ab %2</translation>
    </message>
    <message id="answer.off_soon">
        <source>%1: off since some time between %2 and %3</source>
        <extracomment>A part that came off, nobody knows when. %1 is the part, %2 and %3 are times.</extracomment>
        <translation>%1: gelöst, seit irgendwann zwischen %2 und %3</translation>
    </message>
    <message id="day.evening">
        <source>%1 evening</source>
        <extracomment>Beside a time, to tell which one is meant. %1 is a day of the week.</extracomment>
        <translation>%1abend</translation>
    </message>
    <message id="day.night">
        <source>%1, after midnight</source>
        <extracomment>Beside a time from midnight to 5 AM. %1 is the day of the week that begins at that midnight.</extracomment>
        <translation>%1, nach Mitternacht</translation>
    </message>
    <message id="day.morning">
        <source>%1 morning</source>
        <extracomment>Beside a time, to tell which one is meant. %1 is a day of the week.</extracomment>
        <translation>%1morgen</translation>
    </message>
    <message id="day.afternoon">
        <source>%1 afternoon</source>
        <extracomment>Beside a time, to tell which one is meant. %1 is a day of the week.</extracomment>
        <translation>%1nachmittag</translation>
    </message>
    <message id="review.title">
        <source>Check your answers</source>
        <extracomment>Title of the list of all answers.</extracomment>
        <translation>Prüfen Sie Ihre Antworten</translation>
    </message>
    <message id="review.body">
        <source>Change what is not right. It is fine to leave answers out.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Ändern Sie, was nicht stimmt. Sie dürfen Antworten auslassen.</translation>
    </message>
    <message id="review.main">
        <source>My answers are right</source>
        <extracomment>Large button: the answers are right.</extracomment>
        <translation>Meine Antworten stimmen</translation>
    </message>
    <message id="puzzle.title">
        <source>2 answers do not fit together</source>
        <extracomment>Title of a page that shows 2 answers side by side. Kind, no blame.</extracomment>
        <translation>2 Antworten passen nicht zusammen</translation>
    </message>
    <message id="puzzle.lights_on_before_lights_out">
        <source>Lights on would come before lights out. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation>„Licht an“ käme vor „Licht aus“. Welche Zeit möchten Sie ändern?</translation>
    </message>
    <message id="puzzle.outside_night">
        <source>This would be before or after your night. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation>Das wäre vor oder nach Ihrer Nacht. Welche Zeit möchten Sie ändern?</translation>
    </message>
    <message id="puzzle.longer_than_bed">
        <source>The times asleep and awake add up to more than the time in bed. Which should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation>Schlafzeit und Wachzeit sind zusammen länger als die Zeit im Bett. Was möchten Sie ändern?</translation>
    </message>
    <message id="puzzle.too_long">
        <source>The night would be longer than 24 hours. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both.</extracomment>
        <translation>Die Nacht wäre länger als 24 Stunden. Welche Zeit möchten Sie ändern?</translation>
    </message>
    <message id="puzzle.order">
        <source>These times are the wrong way around: %1, %2. Which time should change?</source>
        <extracomment>On that page: why they do not fit. Buttons below change one of them or leave both. %1 and %2 are names of questions, such as &quot;Into bed&quot;.</extracomment>
        <translation>Diese Zeiten sind in falscher Reihenfolge: %1, %2. Welche Zeit möchten Sie ändern?</translation>
    </message>
    <message id="result.sentence.enough">
        <source>From your notes, this looks like a long enough night. You can pack the kit.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation>Nach Ihren Notizen war die Nacht wohl lang genug. Sie können das Set einpacken.</translation>
    </message>
    <message id="result.sentence.borderline">
        <source>From your notes, this night may be long enough. Pack the kit, and your clinic will look.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation>Nach Ihren Notizen war die Nacht vielleicht lang genug. Packen Sie das Set ein. Ihre Klinik sieht es sich an.</translation>
    </message>
    <message id="result.sentence.short">
        <source>From your notes, this looks like a short night. Pack the kit and ask your clinic what comes next.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation>Nach Ihren Notizen war die Nacht wohl kurz. Packen Sie das Set ein und fragen Sie Ihre Klinik, wie es weitergeht.</translation>
    </message>
    <message id="result.sentence.unknown">
        <source>Your notes do not show how long the night was. Pack the kit, and your clinic will look.</source>
        <extracomment>First sentence of the result: what the notes mean and what to do now. Never words like adequate, valid, normal; never a score.</extracomment>
        <translation>Ihre Notizen zeigen nicht, wie lang die Nacht war. Packen Sie das Set ein. Ihre Klinik sieht es sich an.</translation>
    </message>
    <message id="result.range">
        <source>Hours with the needed sensors in place: about %1 to %2</source>
        <extracomment>Under that sentence. %1 and %2 are numbers of hours, such as &quot;5&quot; and &quot;6 and a half&quot;.</extracomment>
        <translation>Stunden mit den nötigen Sensoren am Platz: etwa %1 bis %2</translation>
    </message>
    <message id="result.range_one">
        <source>Hours with the needed sensors in place: about %1</source>
        <extracomment>Under that sentence. %1 is a number of hours, such as &quot;6 and a half&quot;.</extracomment>
        <translation>Stunden mit den nötigen Sensoren am Platz: etwa %1</translation>
    </message>
    <message id="result.under_one">
        <source>Hours with the needed sensors in place: less than 1</source>
        <extracomment>Under that sentence.</extracomment>
        <translation>Stunden mit den nötigen Sensoren am Platz: weniger als 1</translation>
    </message>
    <message id="result.half">
        <source>%1 and a half</source>
        <extracomment>A number of hours and a half. %1 is the whole number.</extracomment>
        <translation>%1½</translation>
    </message>
    <message id="result.explain">
        <source>Where a bar fades, the time is not sure.</source>
        <extracomment>Under the picture of the night, in which some bars fade at their ends.</extracomment>
        <translation>Wo ein Balken blass wird, ist die Zeit nicht sicher.</translation>
    </message>
    <message id="result.gaps">
        <source>Short gaps are common and no one&apos;s fault.</source>
        <extracomment>After that sentence.</extracomment>
        <translation>Kurze Lücken sind häufig. Niemand ist daran schuld.</translation>
    </message>
    <message id="result.clinic">
        <source>Your clinic decides from the recording. Questions? Call %1.</source>
        <extracomment>Near the result. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Ihre Klinik entscheidet anhand der Aufzeichnung. Fragen? Rufen Sie %1 an.</translation>
    </message>
    <message id="result.lane.sleep">
        <source>Asleep</source>
        <extracomment>Name of the row for sleep in the picture of the night.</extracomment>
        <translation>Schlaf</translation>
    </message>
    <message id="result.clock_back">
        <source>Clocks go back</source>
        <extracomment>Mark in the picture of the night.</extracomment>
        <translation>Uhr zurückgestellt</translation>
    </message>
    <message id="result.clock_forward">
        <source>Clocks go forward</source>
        <extracomment>Mark in the picture of the night.</extracomment>
        <translation>Uhr vorgestellt</translation>
    </message>
    <message id="result.main">
        <source>Stop the recorder and take off the kit</source>
        <extracomment>Large button: the next pages say how to stop the recorder and take the kit off.</extracomment>
        <translation>Rekorder stoppen und Set abnehmen</translation>
    </message>
    <message id="off.stop.switch">
        <source>Turn the recorder off</source>
        <extracomment>Title of a page: the recorder is stopped with its switch.</extracomment>
        <translation>Rekorder ausschalten</translation>
    </message>
    <message id="off.stop.switch.body">
        <source>Slide the switch back until it stops. The recording ends now.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Schieben Sie den Schalter ganz zurück. Damit endet die Aufzeichnung.</translation>
    </message>
    <message id="off.stop.last_plug">
        <source>Stop the recorder</source>
        <extracomment>Title of a page: the recorder stops when the last plug is pulled.</extracomment>
        <translation>Rekorder stoppen</translation>
    </message>
    <message id="off.stop.last_plug.body">
        <source>Pull the plug of the finger clip out of the recorder. The recording ends now.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Ziehen Sie den Stecker vom Fingerclip aus dem Rekorder. Damit endet die Aufzeichnung.</translation>
    </message>
    <message id="off.stop.set_time">
        <source>The recorder stops by itself</source>
        <extracomment>Title of a page: the recorder stops without being touched.</extracomment>
        <translation>Der Rekorder stoppt von selbst</translation>
    </message>
    <message id="off.stop.set_time.body">
        <source>You do not have to press anything. Go on and take off the kit.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Sie müssen nichts drücken. Machen Sie weiter und nehmen Sie das Set ab.</translation>
    </message>
    <message id="off.tape.title">
        <source>Take off the tape slowly</source>
        <extracomment>Title of a page.</extracomment>
        <translation>Pflaster langsam abziehen</translation>
    </message>
    <message id="off.tape.body">
        <source>Fold the strip back along your skin. Pull it low and slow. Hold the skin with your other hand.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Klappen Sie den Streifen um, dicht an der Haut entlang. Ziehen Sie ihn flach und langsam ab. Halten Sie die Haut mit der anderen Hand fest.</translation>
    </message>
    <message id="off.tape.caution">
        <source>Do not tear it off: that can hurt your skin. If it sticks hard, wet it with warm water first.</source>
        <extracomment>Caution on that page.</extracomment>
        <translation>Reißen Sie nicht: Das kann Ihre Haut verletzen. Klebt ein Pflaster sehr fest, machen Sie es erst mit warmem Wasser nass.</translation>
    </message>
    <message id="off.rest.title">
        <source>Take off the rest of the kit</source>
        <extracomment>Title of a page.</extracomment>
        <translation>Den Rest vom Set abnehmen</translation>
    </message>
    <message id="off.rest.body">
        <source>Take off the sensors, then the belts and the recorder.</source>
        <oldsource>Take off the sensors, then the belts and the recorder. Pull on the plugs, not on the cables.</oldsource>
        <extracomment>Under that title.</extracomment>
        <translation>Nehmen Sie die Sensoren ab, dann die Gurte und den Rekorder.</translation>
    </message>
    <message id="skin.title">
        <source>Look at your skin</source>
        <extracomment>Title of a page.</extracomment>
        <translation>Haut ansehen</translation>
    </message>
    <message id="skin.body">
        <source>Look at each spot where tape or a pad was. Look for red skin, a blister or a tear.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Sehen Sie jede Stelle an, wo Pflaster oder eine Elektrode war. Achten Sie auf rote Haut, Blasen oder Risse.</translation>
    </message>
    <message id="skin.again">
        <source>Look once more in 30 minutes.</source>
        <extracomment>On the same page.</extracomment>
        <translation>Sehen Sie in 30 Minuten noch einmal nach.</translation>
    </message>
    <message id="skin.hurt.advice">
        <source>Do not rub or cover the spot. Is it still red, torn or blistered after 30 minutes? Call your clinic: %1.</source>
        <extracomment>On the same page, when the person said that the skin is red or hurts. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Reiben Sie die Stelle nicht und decken Sie sie nicht ab. Ist sie nach 30 Minuten noch rot, oder hat sie Risse oder Blasen? Rufen Sie Ihre Klinik an: %1.</translation>
    </message>
    <message id="pack.title">
        <source>Pack the kit</source>
        <extracomment>Title of the list of what goes back.</extracomment>
        <translation>Set einpacken</translation>
    </message>
    <message id="pack.body">
        <source>Put each part in the bag. Tap it when it is in.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Legen Sie jedes Teil in die Tasche. Tippen Sie es an, wenn es drin ist.</translation>
    </message>
    <message id="pack.main">
        <source>Everything is packed</source>
        <extracomment>Large button: everything is in the bag.</extracomment>
        <translation>Alles ist eingepackt</translation>
    </message>
    <message id="finished.title">
        <source>Thank you. You are done.</source>
        <extracomment>Title of the last page.</extracomment>
        <translation>Danke. Sie sind fertig.</translation>
    </message>
    <message id="finished.body">
        <source>Your diary is saved.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Ihr Tagebuch ist gespeichert.</translation>
    </message>
    <message id="finished.record">
        <source>Saved as %1</source>
        <extracomment>On the last page, small. %1 is the name of the saved record.</extracomment>
        <translation>Gespeichert als %1</translation>
    </message>
    <message id="finished.return">
        <source>Bring the kit back by %1.</source>
        <extracomment>On the last page. %1 is a date.</extracomment>
        <translation>Bringen Sie das Set zurück bis %1.</translation>
    </message>
    <message id="finished.no_record">
        <source>Your notes are safe, but the record could not be written: %1</source>
        <extracomment>On the last page, when the record could not be written. %1 is the reason.</extracomment>
        <translation>Ihre Notizen sind sicher, aber der Datensatz ließ sich nicht speichern: %1</translation>
    </message>
    <message id="finished.keep">
        <source>Bring the tablet back too. Leave it as it is: your diary is on it.</source>
        <extracomment>On the last page, about the tablet.</extracomment>
        <translation>Bringen Sie auch das Tablet zurück. Lassen Sie es, wie es ist: Ihr Tagebuch ist darauf.</translation>
    </message>
    <message id="trouble.disk_full.title">
        <source>The tablet is full</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation>Das Tablet ist voll</translation>
    </message>
    <message id="trouble.disk_full.body">
        <source>All your notes so far are safe. New ones cannot be saved. Keep the kit on, write your times on paper and call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation>Alle Ihre Notizen bis jetzt sind sicher. Neue lassen sich nicht speichern. Lassen Sie das Set an, schreiben Sie Ihre Zeiten auf Papier und rufen Sie Ihre Klinik an. %1</translation>
    </message>
    <message id="trouble.read_only.title">
        <source>The tablet cannot save notes</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation>Das Tablet kann nichts speichern</translation>
    </message>
    <message id="trouble.read_only.body">
        <source>All your notes so far are safe. Keep the kit on, write your times on paper and call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation>Alle Ihre Notizen bis jetzt sind sicher. Lassen Sie das Set an, schreiben Sie Ihre Zeiten auf Papier und rufen Sie Ihre Klinik an. %1</translation>
    </message>
    <message id="trouble.second_copy.title">
        <source>This page is open twice</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation>Diese Seite ist zweimal offen</translation>
    </message>
    <message id="trouble.second_copy.body">
        <source>Nothing is lost. Close the other one, then try again. If that does not help, call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation>Nichts ist verloren. Schließen Sie die andere Seite und versuchen Sie es noch einmal. Hilft das nicht, rufen Sie Ihre Klinik an. %1</translation>
    </message>
    <message id="trouble.damaged.title">
        <source>Some notes could not be read</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation>Einige Notizen sind nicht lesbar</translation>
    </message>
    <message id="trouble.damaged.body">
        <source>What could be read is kept, and nothing was deleted. You can go on. Please tell your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation>Was lesbar ist, ist noch da, und nichts wurde gelöscht. Sie können weitermachen. Bitte sagen Sie Ihrer Klinik Bescheid. %1</translation>
    </message>
    <message id="trouble.sync.title">
        <source>Your last note may not be saved</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation>Ihre letzte Notiz fehlt vielleicht</translation>
    </message>
    <message id="trouble.sync.body">
        <source>All notes before it are safe. Try again. If it comes back, write your times on paper and call your clinic. %1</source>
        <extracomment>Under that title. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation>Alle Notizen davor sind sicher. Versuchen Sie es noch einmal. Kommt diese Seite wieder, schreiben Sie Ihre Zeiten auf Papier und rufen Sie Ihre Klinik an. %1</translation>
    </message>
    <message id="help.ready.charger.1.question">
        <source>The tablet is not charging.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: the tablet goes on its charger.</extracomment>
        <translation>Das Tablet lädt nicht.</translation>
    </message>
    <message id="help.ready.charger.1.fix">
        <source>Press both ends of the cable in well. Then try another wall outlet.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Drücken Sie beide Enden vom Kabel fest hinein. Versuchen Sie es dann an einer anderen Steckdose.</translation>
    </message>
    <message id="help.ready.clothes.1.question">
        <source>I do not sleep in clothes.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: what to wear.</extracomment>
        <translation>Ich schlafe ohne Kleidung.</translation>
    </message>
    <message id="help.ready.clothes.1.fix">
        <source>Put on a thin T-shirt for tonight. The belts can rub on bare skin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Ziehen Sie heute Nacht ein dünnes T-Shirt an. Die Gurte können auf der bloßen Haut reiben.</translation>
    </message>
    <message id="help.ready.bathroom.1.question">
        <source>I often have to go at night.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation>Ich muss nachts oft auf die Toilette.</translation>
    </message>
    <message id="help.ready.bathroom.1.fix">
        <source>You can get up at any time with the kit on. Free the cables first, then walk.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Sie können mit dem Set jederzeit aufstehen. Machen Sie erst die Kabel frei, dann gehen Sie.</translation>
    </message>
    <message id="help.ready.bare.1.question">
        <source>A ring does not come off.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation>Ein Ring geht nicht ab.</translation>
    </message>
    <message id="help.ready.bare.1.fix">
        <source>Leave it on if it is not tight. The clip needs only the tip of your finger.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lassen Sie ihn an, wenn er nicht eng ist. Der Clip braucht nur Ihre Fingerspitze.</translation>
    </message>
    <message id="help.ready.bare.2.question">
        <source>I have gel or false nails.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation>Ich habe Gelnägel oder künstliche Nägel.</translation>
    </message>
    <message id="help.ready.bare.2.fix">
        <source>Use a finger with a bare nail on the same hand. If no nail is bare, call your clinic first.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie einen Finger derselben Hand, dessen Nagel frei ist. Ist kein Nagel frei, rufen Sie erst Ihre Klinik an.</translation>
    </message>
    <message id="help.ready.tape.1.question">
        <source>I do not know how long 5 cm is.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation>Ich weiß nicht, wie lang 5 cm sind.</translation>
    </message>
    <message id="help.ready.tape.1.fix">
        <source>5 cm is 2 inches. A little more or less is fine.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>5 cm sind etwa 3 Finger breit. Etwas mehr oder weniger ist in Ordnung.</translation>
    </message>
    <message id="help.ready.tape.2.question">
        <source>There is not enough tape.</source>
        <extracomment>A fault as the person would say it. On the page: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation>Das Pflaster reicht nicht.</translation>
    </message>
    <message id="help.ready.tape.2.fix">
        <source>Use medical tape for skin if you have some at home. Do not use any other tape.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie Pflaster für die Haut, wenn Sie welches zu Hause haben. Nehmen Sie kein anderes Klebeband.</translation>
    </message>
    <message id="help.effort_belt.chest.wrap.1.question">
        <source>The belt slips down.</source>
        <extracomment>A fault as the person would say it. On the page: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation>Der Gurt rutscht nach unten.</translation>
    </message>
    <message id="help.effort_belt.chest.wrap.1.fix">
        <source>Open it and move it up, close to your armpits. Breathe out and close it a little tighter.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Öffnen Sie ihn und schieben Sie ihn nach oben, nahe an die Achseln. Atmen Sie aus und schließen Sie ihn etwas enger.</translation>
    </message>
    <message id="help.effort_belt.chest.wrap.2.question">
        <source>The belt feels too tight.</source>
        <extracomment>A fault as the person would say it. On the page: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation>Der Gurt ist zu eng.</translation>
    </message>
    <message id="help.effort_belt.chest.wrap.2.fix">
        <source>Open it and make it longer. You should breathe with ease, and 2 fingers should fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Öffnen Sie ihn und machen Sie ihn länger. Sie sollen leicht atmen, und 2 Finger sollen darunter passen.</translation>
    </message>
    <message id="help.effort_belt.chest.wrap.3.question">
        <source>The belt does not reach around me.</source>
        <extracomment>A fault as the person would say it. On the page: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation>Der Gurt ist zu kurz für mich.</translation>
    </message>
    <message id="help.effort_belt.chest.wrap.3.fix">
        <source>Make it as long as it goes. If it still does not reach, leave it off and call your clinic.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Machen Sie ihn so lang wie möglich. Reicht er auch dann nicht, lassen Sie ihn weg und rufen Sie Ihre Klinik an.</translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.1.question">
        <source>The belt slips or rolls up.</source>
        <extracomment>A fault as the person would say it. On the page: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation>Der Gurt rutscht oder rollt sich auf.</translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.1.fix">
        <source>Open it, smooth it flat and put it back over your navel. Breathe out and close it a little tighter.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Öffnen Sie ihn, streichen Sie ihn glatt und legen Sie ihn wieder über den Nabel. Atmen Sie aus und schließen Sie ihn etwas enger.</translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.2.question">
        <source>The belt feels too tight.</source>
        <extracomment>A fault as the person would say it. On the page: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation>Der Gurt ist zu eng.</translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.2.fix">
        <source>Open it and make it longer. You should breathe with ease, and 2 fingers should fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Öffnen Sie ihn und machen Sie ihn länger. Sie sollen leicht atmen, und 2 Finger sollen darunter passen.</translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.3.question">
        <source>The belt does not reach around me.</source>
        <extracomment>A fault as the person would say it. On the page: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation>Der Gurt ist zu kurz für mich.</translation>
    </message>
    <message id="help.effort_belt.abdomen.wrap.3.fix">
        <source>Make it as long as it goes. If it still does not reach, leave it off and call your clinic.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Machen Sie ihn so lang wie möglich. Reicht er auch dann nicht, lassen Sie ihn weg und rufen Sie Ihre Klinik an.</translation>
    </message>
    <message id="help.effort_sensor.snap.1.question">
        <source>It does not snap on.</source>
        <extracomment>A fault as the person would say it. On the page: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation>Er rastet nicht ein.</translation>
    </message>
    <message id="help.effort_sensor.snap.1.fix">
        <source>Put 1 hand behind the belt and press with the other. If it still does not snap, turn the sensor around.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Halten Sie 1 Hand hinter den Gurt und drücken Sie mit der anderen. Rastet er noch nicht ein, drehen Sie den Sensor um.</translation>
    </message>
    <message id="help.effort_sensor.snap.2.question">
        <source>It comes off again.</source>
        <extracomment>A fault as the person would say it. On the page: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation>Er geht wieder ab.</translation>
    </message>
    <message id="help.effort_sensor.snap.2.fix">
        <source>See that no cloth is caught under the sensor. Then press each side until it snaps.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Prüfen Sie, ob Stoff unter dem Sensor klemmt. Drücken Sie dann jede Seite, bis sie einrastet.</translation>
    </message>
    <message id="help.recorder.hip.wear.1.question">
        <source>I like to sleep on that side.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation>Ich schlafe gern auf dieser Seite.</translation>
    </message>
    <message id="help.recorder.hip.wear.1.fix">
        <source>Put it on your other side. See that all cables still reach.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Setzen Sie ihn auf die andere Seite. Prüfen Sie, ob alle Kabel noch reichen.</translation>
    </message>
    <message id="help.recorder.hip.wear.2.question">
        <source>It slides along the belt.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation>Er rutscht am Gurt entlang.</translation>
    </message>
    <message id="help.recorder.hip.wear.2.fix">
        <source>Close the waist belt a little tighter. 2 fingers should still fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Schließen Sie den Bauchgurt etwas enger. 2 Finger sollen noch darunter passen.</translation>
    </message>
    <message id="help.recorder.chest.wear.1.question">
        <source>It presses on my chest.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the front of the chest strap.</extracomment>
        <translation>Er drückt auf meine Brust.</translation>
    </message>
    <message id="help.recorder.chest.wear.1.fix">
        <source>Smooth your shirt under it. Then make the strap a little longer.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Streichen Sie das Hemd darunter glatt. Machen Sie dann den Riemen etwas länger.</translation>
    </message>
    <message id="help.recorder.chest.wear.2.question">
        <source>It does not stay in the middle.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder goes on the front of the chest strap.</extracomment>
        <translation>Er bleibt nicht in der Mitte.</translation>
    </message>
    <message id="help.recorder.chest.wear.2.fix">
        <source>See that both sides are fastened. Then close the strap a little tighter.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Prüfen Sie, ob beide Seiten fest sind. Schließen Sie dann den Riemen etwas enger.</translation>
    </message>
    <message id="help.recorder.harness.wear.1.question">
        <source>I do not know which way it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation>Ich weiß nicht, wie herum sie gehört.</translation>
    </message>
    <message id="help.recorder.harness.wear.1.fix">
        <source>Hold it up with the recorder facing away from you. The 2 long straps go over your shoulders.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Halten Sie die Trageweste hoch. Der Rekorder zeigt von Ihnen weg. Die 2 langen Riemen gehen über die Schultern.</translation>
    </message>
    <message id="help.recorder.harness.wear.2.question">
        <source>The straps slip or rub.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation>Die Riemen rutschen oder reiben.</translation>
    </message>
    <message id="help.recorder.harness.wear.2.fix">
        <source>Make them shorter if they slip, and longer if they rub. Keep them off your neck.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Machen Sie sie kürzer, wenn sie rutschen, und länger, wenn sie reiben. Halten Sie sie vom Hals weg.</translation>
    </message>
    <message id="help.plug.push.1.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in).</extracomment>
        <translation>Der Stecker geht nicht hinein.</translation>
    </message>
    <message id="help.plug.push.1.fix">
        <source>Do not force it. Feel the mark again. Then turn the plug a little and try once more.</source>
        <oldsource>Do not force it. Count the ridges again. Then turn the plug a little and try once more.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Drücken Sie nicht mit Gewalt. Fühlen Sie noch einmal die Markierung. Drehen Sie dann den Stecker etwas und versuchen Sie es noch einmal.</translation>
    </message>
    <message id="help.plug.push.2.question">
        <source>I cannot find the right port.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in).</extracomment>
        <translation>Ich finde die richtige Buchse nicht.</translation>
    </message>
    <message id="help.plug.push.2.fix">
        <source>Run your thumb along the recorder. Each port is an opening with its mark beside it.</source>
        <oldsource>Run your thumb along the recorder. Each port is an opening with its ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Fahren Sie mit dem Daumen am Rekorder entlang. Jede Buchse ist eine Öffnung mit ihrer Markierung daneben.</translation>
    </message>
    <message id="help.plug.push.smooth.1.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation>Der Stecker geht nicht hinein.</translation>
    </message>
    <message id="help.plug.push.smooth.1.fix">
        <source>Do not force it. Feel again for the smooth port. Then turn the plug a little and try once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Drücken Sie nicht mit Gewalt. Tasten Sie noch einmal nach der glatten Buchse. Drehen Sie dann den Stecker etwas und versuchen Sie es noch einmal.</translation>
    </message>
    <message id="help.plug.push.smooth.2.question">
        <source>I cannot find the smooth port.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation>Ich finde die glatte Buchse nicht.</translation>
    </message>
    <message id="help.plug.push.smooth.2.fix">
        <source>Run your thumb along the recorder. The smooth port is the opening with no mark beside it.</source>
        <oldsource>Run your thumb along the recorder. The smooth port is the opening with no ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Fahren Sie mit dem Daumen am Rekorder entlang. Die glatte Buchse ist die Öffnung ohne Markierung daneben.</translation>
    </message>
    <message id="help.plug.twist.1.question">
        <source>The plug does not turn.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Der Stecker lässt sich nicht drehen.</translation>
    </message>
    <message id="help.plug.twist.1.fix">
        <source>Take it out. Feel the mark again. Push it in all the way, then turn it clockwise.</source>
        <oldsource>Take it out. Count the ridges again. Push it in all the way, then turn it clockwise.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Ziehen Sie ihn heraus. Fühlen Sie noch einmal die Markierung. Stecken Sie ihn ganz hinein und drehen Sie ihn dann im Uhrzeigersinn.</translation>
    </message>
    <message id="help.plug.twist.2.question">
        <source>I cannot find the right port.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Ich finde die richtige Buchse nicht.</translation>
    </message>
    <message id="help.plug.twist.2.fix">
        <source>Run your thumb along the recorder. Each port is an opening with its mark beside it.</source>
        <oldsource>Run your thumb along the recorder. Each port is an opening with its ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Fahren Sie mit dem Daumen am Rekorder entlang. Jede Buchse ist eine Öffnung mit ihrer Markierung daneben.</translation>
    </message>
    <message id="help.plug.twist.smooth.1.question">
        <source>The plug does not turn.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Der Stecker lässt sich nicht drehen.</translation>
    </message>
    <message id="help.plug.twist.smooth.1.fix">
        <source>Take it out. Feel again for the smooth port. Push it in all the way, then turn it clockwise.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Ziehen Sie ihn heraus. Tasten Sie noch einmal nach der glatten Buchse. Stecken Sie ihn ganz hinein und drehen Sie ihn dann im Uhrzeigersinn.</translation>
    </message>
    <message id="help.plug.twist.smooth.2.question">
        <source>I cannot find the smooth port.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Ich finde die glatte Buchse nicht.</translation>
    </message>
    <message id="help.plug.twist.smooth.2.fix">
        <source>Run your thumb along the recorder. The smooth port is the opening with no mark beside it.</source>
        <oldsource>Run your thumb along the recorder. The smooth port is the opening with no ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Fahren Sie mit dem Daumen am Rekorder entlang. Die glatte Buchse ist die Öffnung ohne Markierung daneben.</translation>
    </message>
    <message id="help.plug.snap.1.question">
        <source>The plug does not snap in.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps).</extracomment>
        <translation>Der Stecker rastet nicht ein.</translation>
    </message>
    <message id="help.plug.snap.1.fix">
        <source>Do not force it. Feel the mark again. Then turn the plug a little and press once more.</source>
        <oldsource>Do not force it. Count the ridges again. Then turn the plug a little and press once more.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Drücken Sie nicht mit Gewalt. Fühlen Sie noch einmal die Markierung. Drehen Sie dann den Stecker etwas und drücken Sie noch einmal.</translation>
    </message>
    <message id="help.plug.snap.2.question">
        <source>I cannot find the right port.</source>
        <extracomment>A fault as the person would say it. On the page: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps).</extracomment>
        <translation>Ich finde die richtige Buchse nicht.</translation>
    </message>
    <message id="help.plug.snap.2.fix">
        <source>Run your thumb along the recorder. Each port is an opening with its mark beside it.</source>
        <oldsource>Run your thumb along the recorder. Each port is an opening with its ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Fahren Sie mit dem Daumen am Rekorder entlang. Jede Buchse ist eine Öffnung mit ihrer Markierung daneben.</translation>
    </message>
    <message id="help.plug.snap.smooth.1.question">
        <source>The plug does not snap in.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation>Der Stecker rastet nicht ein.</translation>
    </message>
    <message id="help.plug.snap.smooth.1.fix">
        <source>Do not force it. Feel again for the smooth port. Then turn the plug a little and press once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Drücken Sie nicht mit Gewalt. Tasten Sie noch einmal nach der glatten Buchse. Drehen Sie dann den Stecker etwas und drücken Sie noch einmal.</translation>
    </message>
    <message id="help.plug.snap.smooth.2.question">
        <source>I cannot find the smooth port.</source>
        <extracomment>A fault as the person would say it. On the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation>Ich finde die glatte Buchse nicht.</translation>
    </message>
    <message id="help.plug.snap.smooth.2.fix">
        <source>Run your thumb along the recorder. The smooth port is the opening with no mark beside it.</source>
        <oldsource>Run your thumb along the recorder. The smooth port is the opening with no ridges beside it.</oldsource>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Fahren Sie mit dem Daumen am Rekorder entlang. Die glatte Buchse ist die Öffnung ohne Markierung daneben.</translation>
    </message>
    <message id="help.nasal_cannula.prongs.1.question">
        <source>The prongs tickle or hurt.</source>
        <extracomment>A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation>Die Röhrchen kitzeln oder tun weh.</translation>
    </message>
    <message id="help.nasal_cannula.prongs.1.fix">
        <source>Pull them out a little. They sit just inside the nose.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Ziehen Sie sie etwas heraus. Sie sitzen nur ganz vorn in der Nase.</translation>
    </message>
    <message id="help.nasal_cannula.prongs.2.question">
        <source>The prongs slip out.</source>
        <extracomment>A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation>Die Röhrchen rutschen heraus.</translation>
    </message>
    <message id="help.nasal_cannula.prongs.2.fix">
        <source>Hold them for now. They stay in once the tube is over your ears and under your chin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Halten Sie sie erst einmal fest. Sie bleiben drin, sobald der Schlauch über den Ohren und unter dem Kinn liegt.</translation>
    </message>
    <message id="help.nasal_cannula.prongs.3.question">
        <source>My nose is blocked.</source>
        <extracomment>A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation>Meine Nase ist zu.</translation>
    </message>
    <message id="help.nasal_cannula.prongs.3.fix">
        <source>Blow your nose gently and go on. If no air gets through, call your clinic. Do not take anything new for it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Putzen Sie sanft die Nase und machen Sie weiter. Kommt keine Luft durch, rufen Sie Ihre Klinik an. Nehmen Sie nichts Neues dagegen.</translation>
    </message>
    <message id="help.nasal_cannula.ears.1.question">
        <source>It hurts behind my ears.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is laid over both ears.</extracomment>
        <translation>Es tut hinter den Ohren weh.</translation>
    </message>
    <message id="help.nasal_cannula.ears.1.fix">
        <source>Let the tube out a little. You can put a bit of soft cloth under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lassen Sie den Schlauch etwas lockerer. Sie können ein Stück weichen Stoff darunter legen.</translation>
    </message>
    <message id="help.nasal_cannula.ears.2.question">
        <source>It slips off my ears.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is laid over both ears.</extracomment>
        <translation>Er rutscht von den Ohren.</translation>
    </message>
    <message id="help.nasal_cannula.ears.2.fix">
        <source>Take your glasses off. Hook the tube over again. On the next page you make it snug.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie die Brille ab. Legen Sie den Schlauch noch einmal über die Ohren. Auf der nächsten Seite legen Sie ihn enger an.</translation>
    </message>
    <message id="help.nasal_cannula.chin.1.question">
        <source>It feels tight when I swallow.</source>
        <extracomment>A fault as the person would say it. On the page: the small ring on the tube is slid up under the chin.</extracomment>
        <translation>Beim Schlucken ist es zu eng.</translation>
    </message>
    <message id="help.nasal_cannula.chin.1.fix">
        <source>Slide the ring down a little. Swallow again to test it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Schieben Sie den Ring etwas nach unten. Schlucken Sie noch einmal zur Probe.</translation>
    </message>
    <message id="help.nasal_cannula.chin.2.question">
        <source>The ring slides down.</source>
        <extracomment>A fault as the person would say it. On the page: the small ring on the tube is slid up under the chin.</extracomment>
        <translation>Der Ring rutscht nach unten.</translation>
    </message>
    <message id="help.nasal_cannula.chin.2.fix">
        <source>Hold both tubes with 1 hand and slide the ring up with the other. Turn your head to test it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Halten Sie beide Schläuche mit 1 Hand und schieben Sie den Ring mit der anderen hoch. Drehen Sie zur Probe den Kopf.</translation>
    </message>
    <message id="help.nasal_cannula.tape.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is taped to both cheeks.</extracomment>
        <translation>Das Pflaster klebt nicht.</translation>
    </message>
    <message id="help.nasal_cannula.tape.1.fix">
        <source>Dry your cheek and wipe off any cream. Then use a new strip.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie die Wange und wischen Sie Creme ab. Nehmen Sie dann einen neuen Streifen.</translation>
    </message>
    <message id="help.nasal_cannula.tape.2.question">
        <source>I have a beard.</source>
        <extracomment>A fault as the person would say it. On the page: the tube is taped to both cheeks.</extracomment>
        <translation>Ich habe einen Bart.</translation>
    </message>
    <message id="help.nasal_cannula.tape.2.fix">
        <source>Put the strip on bare skin above the beard.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Kleben Sie den Streifen oberhalb vom Bart auf die freie Haut.</translation>
    </message>
    <message id="help.nasal_cannula.join.push.1.question">
        <source>The tube slides off.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation>Der Schlauch rutscht ab.</translation>
    </message>
    <message id="help.nasal_cannula.join.push.1.fix">
        <source>Wipe both ends dry. Then push the tube on with a small turn, as far as it goes.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Wischen Sie beide Enden trocken. Schieben Sie den Schlauch dann mit einer kleinen Drehung auf, so weit es geht.</translation>
    </message>
    <message id="help.nasal_cannula.join.push.2.question">
        <source>I cannot find where it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation>Ich finde nicht, wohin er gehört.</translation>
    </message>
    <message id="help.nasal_cannula.join.push.2.fix">
        <source>Look for a short round nozzle that is open in the middle. The tube fits only there.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Suchen Sie einen kurzen runden Stutzen mit einem Loch in der Mitte. Der Schlauch passt nur dort.</translation>
    </message>
    <message id="help.nasal_cannula.join.twist.1.question">
        <source>The tube does not turn.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation>Der Schlauch lässt sich nicht drehen.</translation>
    </message>
    <message id="help.nasal_cannula.join.twist.1.fix">
        <source>Take it off and set it on straight. Then turn it clockwise, the way the hands of a clock move.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie ihn ab und setzen Sie ihn gerade auf. Drehen Sie ihn dann im Uhrzeigersinn, so wie die Zeiger einer Uhr.</translation>
    </message>
    <message id="help.nasal_cannula.join.twist.2.question">
        <source>I cannot find where it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation>Ich finde nicht, wohin er gehört.</translation>
    </message>
    <message id="help.nasal_cannula.join.twist.2.fix">
        <source>Look for a short round nozzle that is open in the middle. The tube fits only there.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Suchen Sie einen kurzen runden Stutzen mit einem Loch in der Mitte. Der Schlauch passt nur dort.</translation>
    </message>
    <message id="help.nasal_cannula.join.snap.1.question">
        <source>The tube does not snap on.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation>Der Schlauch rastet nicht ein.</translation>
    </message>
    <message id="help.nasal_cannula.join.snap.1.fix">
        <source>Take it off and set it on straight. Then press it until it snaps. Do not force it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie ihn ab und setzen Sie ihn gerade auf. Drücken Sie dann, bis er einrastet. Drücken Sie nicht mit Gewalt.</translation>
    </message>
    <message id="help.nasal_cannula.join.snap.2.question">
        <source>I cannot find where it goes.</source>
        <extracomment>A fault as the person would say it. On the page: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation>Ich finde nicht, wohin er gehört.</translation>
    </message>
    <message id="help.nasal_cannula.join.snap.2.fix">
        <source>Look for a short round nozzle that is open in the middle. The tube fits only there.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Suchen Sie einen kurzen runden Stutzen mit einem Loch in der Mitte. Der Schlauch passt nur dort.</translation>
    </message>
    <message id="help.breath_sensor.place.1.question">
        <source>It touches my lip or nose.</source>
        <extracomment>A fault as the person would say it. On the page: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation>Er berührt Lippe oder Nase.</translation>
    </message>
    <message id="help.breath_sensor.place.1.fix">
        <source>Bend the soft tips a little, away from your skin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Biegen Sie die weichen Spitzen etwas von der Haut weg.</translation>
    </message>
    <message id="help.breath_sensor.place.2.question">
        <source>It does not stay in place.</source>
        <extracomment>A fault as the person would say it. On the page: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation>Er bleibt nicht an seinem Platz.</translation>
    </message>
    <message id="help.breath_sensor.place.2.fix">
        <source>Push it back to the middle of the nose tube and press it on.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Schieben Sie ihn wieder in die Mitte vom Nasenschlauch und drücken Sie ihn fest.</translation>
    </message>
    <message id="help.finger_probe.place.left.1.question">
        <source>My left hand is cold.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation>Meine linke Hand ist kalt.</translation>
    </message>
    <message id="help.finger_probe.place.left.1.fix">
        <source>Hold it in warm water or rub it. Dry it well, then put the clip on.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Halten Sie sie in warmes Wasser oder reiben Sie sie. Trocknen Sie sie gut ab und setzen Sie dann den Clip auf.</translation>
    </message>
    <message id="help.finger_probe.place.left.2.question">
        <source>The clip hurts or feels tight.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation>Der Clip tut weh oder ist eng.</translation>
    </message>
    <message id="help.finger_probe.place.left.2.fix">
        <source>Take it off and put it on again, straight. If it still hurts, use the middle finger of your left hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie ihn ab und setzen Sie ihn gerade wieder auf. Tut er noch weh, nehmen Sie den Mittelfinger Ihrer linken Hand.</translation>
    </message>
    <message id="help.finger_probe.place.left.3.question">
        <source>The clip slides off.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation>Der Clip rutscht ab.</translation>
    </message>
    <message id="help.finger_probe.place.left.3.fix">
        <source>Dry your finger and push it all the way in. Lay the cable flat on the back of your left hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie den Finger und schieben Sie ihn ganz hinein. Legen Sie das Kabel flach auf den Rücken Ihrer linken Hand.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.1.question">
        <source>I cannot do it with 1 hand.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation>Mit 1 Hand schaffe ich es nicht.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.1.fix">
        <source>Rest your left hand on a table. Stick down 1 end of the strip, then smooth the rest over the cable.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Legen Sie Ihre linke Hand auf einen Tisch. Kleben Sie 1 Ende vom Streifen fest. Streichen Sie dann den Rest über das Kabel.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.2.question">
        <source>The cable pulls on the clip.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation>Das Kabel zieht am Clip.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.left.2.fix">
        <source>Lift the strip slowly. Make a fist, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lösen Sie den Streifen langsam. Machen Sie eine Faust, lassen Sie das Kabel locker und drücken Sie den Streifen wieder fest.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation>Das Pflaster klebt nicht.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.1.fix">
        <source>Dry the skin and wipe off any cream. Use a new strip where there is little hair.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie die Haut und wischen Sie Creme ab. Nehmen Sie einen neuen Streifen, wo wenig Haare sind.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation>Das Kabel zieht.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.left.2.fix">
        <source>Lift the strip slowly. Bend your arm, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lösen Sie den Streifen langsam. Beugen Sie den Arm, lassen Sie das Kabel locker und drücken Sie den Streifen wieder fest.</translation>
    </message>
    <message id="help.finger_probe.plug.left.1.question">
        <source>The cable does not reach.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation>Das Kabel reicht nicht.</translation>
    </message>
    <message id="help.finger_probe.plug.left.1.fix">
        <source>Bend your left arm. If it still does not reach, tape the cable again with less slack.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Beugen Sie Ihren linken Arm. Reicht es noch nicht, kleben Sie das Kabel neu und lassen Sie es weniger locker.</translation>
    </message>
    <message id="help.finger_probe.plug.left.2.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation>Der Stecker geht nicht hinein.</translation>
    </message>
    <message id="help.finger_probe.plug.left.2.fix">
        <source>Do not force it. See that it is the right port. Then turn the plug a little and try once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Drücken Sie nicht mit Gewalt. Prüfen Sie, ob es die richtige Buchse ist. Drehen Sie dann den Stecker etwas und versuchen Sie es noch einmal.</translation>
    </message>
    <message id="help.finger_probe.place.right.1.question">
        <source>My right hand is cold.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation>Meine rechte Hand ist kalt.</translation>
    </message>
    <message id="help.finger_probe.place.right.1.fix">
        <source>Hold it in warm water or rub it. Dry it well, then put the clip on.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Halten Sie sie in warmes Wasser oder reiben Sie sie. Trocknen Sie sie gut ab und setzen Sie dann den Clip auf.</translation>
    </message>
    <message id="help.finger_probe.place.right.2.question">
        <source>The clip hurts or feels tight.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation>Der Clip tut weh oder ist eng.</translation>
    </message>
    <message id="help.finger_probe.place.right.2.fix">
        <source>Take it off and put it on again, straight. If it still hurts, use the middle finger of your right hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie ihn ab und setzen Sie ihn gerade wieder auf. Tut er noch weh, nehmen Sie den Mittelfinger Ihrer rechten Hand.</translation>
    </message>
    <message id="help.finger_probe.place.right.3.question">
        <source>The clip slides off.</source>
        <extracomment>A fault as the person would say it. On the page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation>Der Clip rutscht ab.</translation>
    </message>
    <message id="help.finger_probe.place.right.3.fix">
        <source>Dry your finger and push it all the way in. Lay the cable flat on the back of your right hand.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie den Finger und schieben Sie ihn ganz hinein. Legen Sie das Kabel flach auf den Rücken Ihrer rechten Hand.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.1.question">
        <source>I cannot do it with 1 hand.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation>Mit 1 Hand schaffe ich es nicht.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.1.fix">
        <source>Rest your right hand on a table. Stick down 1 end of the strip, then smooth the rest over the cable.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Legen Sie Ihre rechte Hand auf einen Tisch. Kleben Sie 1 Ende vom Streifen fest. Streichen Sie dann den Rest über das Kabel.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.2.question">
        <source>The cable pulls on the clip.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation>Das Kabel zieht am Clip.</translation>
    </message>
    <message id="help.finger_probe.tape_hand.right.2.fix">
        <source>Lift the strip slowly. Make a fist, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lösen Sie den Streifen langsam. Machen Sie eine Faust, lassen Sie das Kabel locker und drücken Sie den Streifen wieder fest.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation>Das Pflaster klebt nicht.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.1.fix">
        <source>Dry the skin and wipe off any cream. Use a new strip where there is little hair.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie die Haut und wischen Sie Creme ab. Nehmen Sie einen neuen Streifen, wo wenig Haare sind.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation>Das Kabel zieht.</translation>
    </message>
    <message id="help.finger_probe.tape_arm.right.2.fix">
        <source>Lift the strip slowly. Bend your arm, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lösen Sie den Streifen langsam. Beugen Sie den Arm, lassen Sie das Kabel locker und drücken Sie den Streifen wieder fest.</translation>
    </message>
    <message id="help.finger_probe.plug.right.1.question">
        <source>The cable does not reach.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation>Das Kabel reicht nicht.</translation>
    </message>
    <message id="help.finger_probe.plug.right.1.fix">
        <source>Bend your right arm. If it still does not reach, tape the cable again with less slack.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Beugen Sie Ihren rechten Arm. Reicht es noch nicht, kleben Sie das Kabel neu und lassen Sie es weniger locker.</translation>
    </message>
    <message id="help.finger_probe.plug.right.2.question">
        <source>The plug does not go in.</source>
        <extracomment>A fault as the person would say it. On the page: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation>Der Stecker geht nicht hinein.</translation>
    </message>
    <message id="help.finger_probe.plug.right.2.fix">
        <source>Do not force it. See that it is the right port. Then turn the plug a little and try once more.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Drücken Sie nicht mit Gewalt. Prüfen Sie, ob es die richtige Buchse ist. Drehen Sie dann den Stecker etwas und versuchen Sie es noch einmal.</translation>
    </message>
    <message id="help.ecg_electrodes.place.1.question">
        <source>A pad does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation>Eine Elektrode klebt nicht.</translation>
    </message>
    <message id="help.ecg_electrodes.place.1.fix">
        <source>Dry the skin and wipe off any cream. Press down the edge of the pad for 10 seconds.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie die Haut und wischen Sie Creme ab. Drücken Sie den Rand der Elektrode 10 Sekunden lang fest.</translation>
    </message>
    <message id="help.ecg_electrodes.place.2.question">
        <source>I have hair there.</source>
        <extracomment>A fault as the person would say it. On the page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation>Ich habe dort Haare.</translation>
    </message>
    <message id="help.ecg_electrodes.place.2.fix">
        <source>Move the pad a little, to a spot with less hair. Press it down well.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Setzen Sie die Elektrode ein wenig daneben, wo weniger Haare sind. Drücken Sie sie gut fest.</translation>
    </message>
    <message id="help.body_position_sensor.place.1.question">
        <source>The arrow points the wrong way.</source>
        <extracomment>A fault as the person would say it. On the page: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation>Der Pfeil zeigt in die falsche Richtung.</translation>
    </message>
    <message id="help.body_position_sensor.place.1.fix">
        <source>Take the sensor off. Turn it so that the arrow points to your head, and put it back.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Nehmen Sie den Sensor ab. Drehen Sie ihn so, dass der Pfeil zum Kopf zeigt, und setzen Sie ihn wieder auf.</translation>
    </message>
    <message id="help.body_position_sensor.place.2.question">
        <source>It slides to the side.</source>
        <extracomment>A fault as the person would say it. On the page: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation>Er rutscht zur Seite.</translation>
    </message>
    <message id="help.body_position_sensor.place.2.fix">
        <source>Move it back to the middle. Close the chest belt a little tighter. 2 fingers should still fit under it.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Schieben Sie ihn wieder in die Mitte. Schließen Sie den Brustgurt etwas enger. 2 Finger sollen noch darunter passen.</translation>
    </message>
    <message id="help.snore_microphone.place.1.question">
        <source>The tape does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation>Das Pflaster klebt nicht.</translation>
    </message>
    <message id="help.snore_microphone.place.1.fix">
        <source>Dry the skin and wipe off any cream. If you have a beard, go a little lower, to bare skin.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie die Haut und wischen Sie Creme ab. Wenn Sie einen Bart haben, gehen Sie etwas tiefer, auf freie Haut.</translation>
    </message>
    <message id="help.snore_microphone.place.2.question">
        <source>It bothers me when I swallow.</source>
        <extracomment>A fault as the person would say it. On the page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation>Er stört mich beim Schlucken.</translation>
    </message>
    <message id="help.snore_microphone.place.2.fix">
        <source>Move it a little more to the side of your neck.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Setzen Sie ihn etwas weiter seitlich an den Hals.</translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.1.question">
        <source>A pad does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation>Eine Elektrode klebt nicht.</translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.1.fix">
        <source>Dry the skin and wipe off any cream. Pick a spot with little hair and press for 10 seconds.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie die Haut und wischen Sie Creme ab. Wählen Sie eine Stelle mit wenig Haaren und drücken Sie 10 Sekunden lang.</translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation>Das Kabel zieht.</translation>
    </message>
    <message id="help.leg_electrodes.left_leg.place.2.fix">
        <source>Lift the strip slowly. Bend your knee, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lösen Sie den Streifen langsam. Beugen Sie das Knie, lassen Sie das Kabel locker und drücken Sie den Streifen wieder fest.</translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.1.question">
        <source>A pad does not stick.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation>Eine Elektrode klebt nicht.</translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.1.fix">
        <source>Dry the skin and wipe off any cream. Pick a spot with little hair and press for 10 seconds.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Trocknen Sie die Haut und wischen Sie Creme ab. Wählen Sie eine Stelle mit wenig Haaren und drücken Sie 10 Sekunden lang.</translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.2.question">
        <source>The cable pulls.</source>
        <extracomment>A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation>Das Kabel zieht.</translation>
    </message>
    <message id="help.leg_electrodes.right_leg.place.2.fix">
        <source>Lift the strip slowly. Bend your knee, let the cable hang loose and press the strip down again.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Lösen Sie den Streifen langsam. Beugen Sie das Knie, lassen Sie das Kabel locker und drücken Sie den Streifen wieder fest.</translation>
    </message>
    <message id="help.start.switch.1.question">
        <source>The switch does not move.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder is started with a sliding switch.</extracomment>
        <translation>Der Schalter bewegt sich nicht.</translation>
    </message>
    <message id="help.start.switch.1.fix">
        <source>Slide it, do not press it. Use your thumb and follow the arrow in the picture.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Schieben Sie ihn, drücken Sie ihn nicht. Nehmen Sie den Daumen und folgen Sie dem Pfeil im Bild.</translation>
    </message>
    <message id="help.start.switch.2.question">
        <source>Nothing happens.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder is started with a sliding switch.</extracomment>
        <translation>Es passiert nichts.</translation>
    </message>
    <message id="help.start.switch.2.fix">
        <source>Slide it back. Wait 10 seconds and slide it again. Then go on and look at the light.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Schieben Sie ihn zurück. Warten Sie 10 Sekunden und schieben Sie ihn noch einmal. Gehen Sie dann weiter und sehen Sie auf das Lämpchen.</translation>
    </message>
    <message id="help.start.set_time.1.question">
        <source>I want to sleep before that time.</source>
        <extracomment>A fault as the person would say it. On the page: the recorder starts by itself at a set time.</extracomment>
        <translation>Ich möchte vor dieser Zeit schlafen.</translation>
    </message>
    <message id="help.start.set_time.1.fix">
        <source>You can. Keep the kit on. The recorder starts while you sleep.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Das können Sie. Lassen Sie das Set an. Der Rekorder startet, während Sie schlafen.</translation>
    </message>
    <message id="help.start.set_time.2.question">
        <source>I am late. Has it started yet?</source>
        <extracomment>A fault as the person would say it. On the page: the recorder starts by itself at a set time.</extracomment>
        <translation>Ich bin spät dran. Hat er schon angefangen?</translation>
    </message>
    <message id="help.start.set_time.2.fix">
        <source>Go on and look at the light. It shows if the recorder is recording.</source>
        <extracomment>What to do about the fault in the text before this one.</extracomment>
        <translation>Gehen Sie weiter und sehen Sie auf das Lämpchen. Es zeigt, ob der Rekorder aufzeichnet.</translation>
    </message>
    <message id="part.label">
        <source>Now: %1</source>
        <extracomment>Small line over the title of a step. %1 is the name of a part, such as &quot;chest belt&quot;.</extracomment>
        <translation>Jetzt: %1</translation>
    </message>
    <message id="part.effort_belt.chest">
        <source>chest belt</source>
        <extracomment>Name of a part of the kit (respiratory effort belt, chest), lower case, the same everywhere.</extracomment>
        <translation>Brustgurt</translation>
    </message>
    <message id="part.effort_belt.abdomen">
        <source>waist belt</source>
        <extracomment>Name of a part of the kit (respiratory effort belt, abdomen), lower case, the same everywhere.</extracomment>
        <translation>Bauchgurt</translation>
    </message>
    <message id="part.effort_sensor.chest">
        <source>chest sensor</source>
        <extracomment>Name of a part of the kit (effort sensor on the chest belt), lower case, the same everywhere.</extracomment>
        <translation>Brustsensor</translation>
    </message>
    <message id="part.effort_sensor.abdomen">
        <source>waist sensor</source>
        <extracomment>Name of a part of the kit (effort sensor on the waist belt), lower case, the same everywhere.</extracomment>
        <translation>Bauchsensor</translation>
    </message>
    <message id="part.recorder">
        <source>recorder</source>
        <extracomment>Name of a part of the kit (the small box that records), lower case, the same everywhere.</extracomment>
        <translation>Rekorder</translation>
    </message>
    <message id="part.nasal_cannula">
        <source>nose tube</source>
        <extracomment>Name of a part of the kit (nasal cannula), lower case, the same everywhere.</extracomment>
        <translation>Nasenschlauch</translation>
    </message>
    <message id="part.breath_sensor">
        <source>breath sensor</source>
        <extracomment>Name of a part of the kit (thermal airflow sensor), lower case, the same everywhere.</extracomment>
        <translation>Atemsensor</translation>
    </message>
    <message id="part.finger_probe">
        <source>finger clip</source>
        <extracomment>Name of a part of the kit (finger probe of the pulse oximeter), lower case, the same everywhere.</extracomment>
        <translation>Fingerclip</translation>
    </message>
    <message id="part.ecg_electrodes">
        <source>heart pads</source>
        <extracomment>Name of a part of the kit (ECG electrodes), lower case, the same everywhere.</extracomment>
        <translation>EKG-Elektroden</translation>
    </message>
    <message id="part.body_position_sensor">
        <source>position sensor</source>
        <extracomment>Name of a part of the kit (body position sensor), lower case, the same everywhere.</extracomment>
        <translation>Lagesensor</translation>
    </message>
    <message id="part.snore_microphone">
        <source>snore sensor</source>
        <extracomment>Name of a part of the kit (snore microphone), lower case, the same everywhere.</extracomment>
        <translation>Schnarchsensor</translation>
    </message>
    <message id="part.leg_electrodes.left_leg">
        <source>left leg pads</source>
        <extracomment>Name of a part of the kit (EMG electrodes, left leg), lower case, the same everywhere.</extracomment>
        <translation>Beinelektroden links</translation>
    </message>
    <message id="part.leg_electrodes.right_leg">
        <source>right leg pads</source>
        <extracomment>Name of a part of the kit (EMG electrodes, right leg), lower case, the same everywhere.</extracomment>
        <translation>Beinelektroden rechts</translation>
    </message>
    <message id="step.ready.charger.title">
        <source>Put the tablet on its charger</source>
        <extracomment>Title of the page: getting ready: the tablet goes on its charger. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Tablet an das Ladegerät anschließen</translation>
    </message>
    <message id="step.ready.charger.body">
        <source>Plug in the charger beside your bed. Leave the tablet on it all night.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: the tablet goes on its charger.</extracomment>
        <translation>Stecken Sie das Ladegerät neben dem Bett ein. Lassen Sie das Tablet die ganze Nacht dort angeschlossen.</translation>
    </message>
    <message id="step.ready.charger.right">
        <source>The tablet shows that it is charging.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: the tablet goes on its charger.</extracomment>
        <translation>Das Tablet zeigt, dass es lädt.</translation>
    </message>
    <message id="step.ready.charger.why">
        <source>The tablet keeps your notes all night. On its charger it will not run out of power.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: the tablet goes on its charger.</extracomment>
        <translation>Das Tablet bewahrt die ganze Nacht Ihre Notizen auf. Am Ladegerät geht ihm der Strom nicht aus.</translation>
    </message>
    <message id="step.ready.clothes.title">
        <source>Put on loose nightwear</source>
        <extracomment>Title of the page: getting ready: what to wear. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Lockere Nachtkleidung anziehen</translation>
    </message>
    <message id="step.ready.clothes.body">
        <source>Wear what you like to sleep in, as long as it is loose. The kit goes over your clothes.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: what to wear.</extracomment>
        <translation>Tragen Sie, worin Sie gern schlafen, wenn es locker ist. Das Set kommt über die Kleidung.</translation>
    </message>
    <message id="step.ready.clothes.right">
        <source>You can raise both arms, and nothing is tight.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: what to wear.</extracomment>
        <translation>Sie können beide Arme heben, und nichts ist eng.</translation>
    </message>
    <message id="step.ready.clothes.why">
        <source>Tight clothes can shift the belts when you turn over. A thin layer of cloth also protects your skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: what to wear.</extracomment>
        <translation>Enge Kleidung kann die Gurte verschieben, wenn Sie sich umdrehen. Eine dünne Schicht Stoff schützt auch die Haut.</translation>
    </message>
    <message id="step.ready.bathroom.title">
        <source>Go to the bathroom now</source>
        <extracomment>Title of the page: getting ready: the bathroom, before anything is connected. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Jetzt auf die Toilette gehen</translation>
    </message>
    <message id="step.ready.bathroom.body">
        <source>Go before the kit is on. Wash your hands and face, and dry them well.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation>Gehen Sie, bevor Sie das Set anlegen. Waschen Sie Hände und Gesicht und trocknen Sie sie gut ab.</translation>
    </message>
    <message id="step.ready.bathroom.right">
        <source>Your face and hands are clean and dry, with no cream on them.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation>Gesicht und Hände sind sauber und trocken, ohne Creme.</translation>
    </message>
    <message id="step.ready.bathroom.why">
        <source>Getting up is harder with the kit on. Tape holds best on clean, dry skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: the bathroom, before anything is connected.</extracomment>
        <translation>Mit dem Set ist das Aufstehen schwerer. Pflaster hält am besten auf sauberer, trockener Haut.</translation>
    </message>
    <message id="step.ready.bare.title">
        <source>Take off rings, watch and nail polish</source>
        <extracomment>Title of the page: getting ready: rings, watch and nail polish come off. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Ringe, Uhr und Nagellack entfernen</translation>
    </message>
    <message id="step.ready.bare.body">
        <source>Take off necklaces too. Polish must be off the index finger of the hand you do not write with.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation>Nehmen Sie auch Ketten ab. Am Zeigefinger der Hand, mit der Sie nicht schreiben, muss der Lack ab sein.</translation>
    </message>
    <message id="step.ready.bare.right">
        <source>Your hands and neck are bare, and so is that nail.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation>Hände und Hals sind frei, und dieser Nagel auch.</translation>
    </message>
    <message id="step.ready.bare.why">
        <source>The finger clip shines a light through your nail. Polish can block it. Rings and chains can catch on the cables.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: rings, watch and nail polish come off.</extracomment>
        <translation>Der Fingerclip leuchtet durch den Nagel. Lack kann das Licht stören. Ringe und Ketten können an den Kabeln hängen bleiben.</translation>
    </message>
    <message id="step.ready.tape.title">
        <source>Tape strips to tear off: %1 (%2 cm each)</source>
        <extracomment>Title of the page: getting ready: strips of tape are torn off before they are needed. Next to a picture of it. At most 45 characters. %1 is the number of strips, %2 the length of each in cm.</extracomment>
        <translation>Pflasterstreifen abreißen: %1 (je %2 cm)</translation>
    </message>
    <message id="step.ready.tape.body">
        <source>Tear off this many strips: %1. Make each about %2 cm long. Hang them by one end on the edge of a table.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: getting ready: strips of tape are torn off before they are needed. %1 is the number of strips, %2 the length of each in cm.</extracomment>
        <translation>Reißen Sie so viele Streifen ab: %1. Jeder soll etwa %2 cm lang sein. Hängen Sie sie mit 1 Ende an eine Tischkante.</translation>
    </message>
    <message id="step.ready.tape.right">
        <source>All strips hang ready, and you can reach them with ease.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation>Alle Streifen hängen bereit, und Sie kommen leicht daran.</translation>
    </message>
    <message id="step.ready.tape.why">
        <source>Later on you have only 1 free hand. It helps when the strips are ready.</source>
        <extracomment>Answer to &quot;Why this?&quot;: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation>Später haben Sie nur 1 Hand frei. Dann hilft es, wenn die Streifen bereit sind.</translation>
    </message>
    <message id="step.ready.tape.caution">
        <source>Does tape make your skin itch, sore or red? Do not use it. Call your clinic first. Never put tape on sore or broken skin.</source>
        <extracomment>Caution in a box on this page: getting ready: strips of tape are torn off before they are needed.</extracomment>
        <translation>Juckt Ihre Haut von Pflaster, wird sie wund oder rot? Nehmen Sie es nicht. Rufen Sie erst Ihre Klinik an. Kleben Sie nie Pflaster auf wunde oder verletzte Haut.</translation>
    </message>
    <message id="step.effort_belt.chest.wrap.title">
        <source>Close the belt around your chest</source>
        <extracomment>Title of the page: the chest belt is closed round the chest, at the end of a breath out. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Gurt um die Brust schließen</translation>
    </message>
    <message id="step.effort_belt.chest.wrap.body">
        <source>Put it under your armpits. Close it at the end of a slow breath out.</source>
        <oldsource>Put it under your armpits. Breathe out slowly. At the end of the breath, close the belt.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation>Legen Sie ihn dicht unter den Achseln an. Atmen Sie langsam aus und schließen Sie ihn am Ende.</translation>
    </message>
    <message id="step.effort_belt.chest.wrap.right">
        <source>It lies flat, 2 fingers fit under it, and it stays put.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation>Er liegt flach, 2 Finger passen darunter, und er rutscht nicht.</translation>
    </message>
    <message id="step.effort_belt.chest.wrap.why">
        <source>This belt feels your chest move as you breathe. If it is loose, it slips. If it is tight, it is hard to breathe.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the chest belt is closed round the chest, at the end of a breath out.</extracomment>
        <translation>Dieser Gurt spürt, wie sich die Brust beim Atmen bewegt. Ist er locker, rutscht er. Ist er zu eng, fällt das Atmen schwer.</translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.title">
        <source>Close the belt over your navel</source>
        <extracomment>Title of the page: the waist belt is closed round the waist, over the navel, at the end of a breath out. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Gurt über dem Nabel schließen</translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.body">
        <source>Put it around your waist. Close it at the end of a slow breath out.</source>
        <oldsource>Put it around your waist. Breathe out slowly. At the end of the breath, close the belt.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation>Legen Sie ihn um den Bauch. Atmen Sie langsam aus und schließen Sie ihn am Ende.</translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.right">
        <source>It lies flat, 2 fingers fit under it, and it stays put.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation>Er liegt flach, 2 Finger passen darunter, und er rutscht nicht.</translation>
    </message>
    <message id="step.effort_belt.abdomen.wrap.why">
        <source>This belt feels your belly move as you breathe. If it is loose, it slips. If it is tight, it is hard to breathe.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the waist belt is closed round the waist, over the navel, at the end of a breath out.</extracomment>
        <translation>Dieser Gurt spürt, wie sich der Bauch beim Atmen bewegt. Ist er locker, rutscht er. Ist er zu eng, fällt das Atmen schwer.</translation>
    </message>
    <message id="step.effort_sensor.snap.title">
        <source>Snap the sensor on to its belt</source>
        <extracomment>Title of the page: a sensor is pressed on to the 2 studs of a belt (the label names which sensor). Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Sensor auf seinen Gurt drücken</translation>
    </message>
    <message id="step.effort_sensor.snap.body">
        <source>Hold it in front of the 2 studs on the belt. Press each side until it snaps.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation>Halten Sie ihn vor die 2 Druckknöpfe am Gurt. Drücken Sie jede Seite, bis sie einrastet.</translation>
    </message>
    <message id="step.effort_sensor.snap.right">
        <source>You felt it snap, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation>Sie haben das Einrasten gespürt. Er hält, wenn Sie leicht ziehen.</translation>
    </message>
    <message id="step.effort_sensor.snap.why">
        <source>The sensor feels how the belt stretches. If it is loose, it misses your breath.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a sensor is pressed on to the 2 studs of a belt (the label names which sensor).</extracomment>
        <translation>Der Sensor spürt, wie sich der Gurt dehnt. Sitzt er lose, spürt er Ihren Atem nicht.</translation>
    </message>
    <message id="step.recorder.hip.wear.title">
        <source>Put the recorder on your waist belt</source>
        <extracomment>Title of the page: the recorder goes on the waist belt, at the side of the hip. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Rekorder am Bauchgurt befestigen</translation>
    </message>
    <message id="step.recorder.hip.wear.body">
        <source>Fasten it to the waist belt at your side, over the hip. The side with the ports (the openings for plugs) points up.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation>Befestigen Sie ihn seitlich am Bauchgurt, über der Hüfte. Die Seite mit den Buchsen (Öffnungen für die Stecker) zeigt nach oben.</translation>
    </message>
    <message id="step.recorder.hip.wear.right">
        <source>It sits at your side and does not swing.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation>Er sitzt an der Seite und schwingt nicht.</translation>
    </message>
    <message id="step.recorder.hip.wear.why">
        <source>The recorder saves what the sensors feel. At your side it is least in your way.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder goes on the waist belt, at the side of the hip.</extracomment>
        <translation>Der Rekorder speichert, was die Sensoren spüren. An der Seite stört er am wenigsten.</translation>
    </message>
    <message id="step.recorder.chest.wear.title">
        <source>Put the recorder on your chest strap</source>
        <extracomment>Title of the page: the recorder goes on the front of the chest strap. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Rekorder am Brustriemen befestigen</translation>
    </message>
    <message id="step.recorder.chest.wear.body">
        <source>Fasten it in front, beside the buckle. The side with the ports (the openings for plugs) points up.</source>
        <oldsource>Fasten it in front, in the middle of your chest. The side with the ports (the openings for plugs) points up.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder goes on the front of the chest strap.</extracomment>
        <translation>Befestigen Sie ihn vorn, neben der Schnalle. Die Seite mit den Buchsen (Öffnungen für die Stecker) zeigt nach oben.</translation>
    </message>
    <message id="step.recorder.chest.wear.right">
        <source>It hangs in front and lies flat.</source>
        <oldsource>It hangs in the middle and lies flat.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder goes on the front of the chest strap.</extracomment>
        <translation>Er hängt vorn und liegt flach.</translation>
    </message>
    <message id="step.recorder.chest.wear.why">
        <source>The recorder saves what the sensors feel. On your chest it is close to them, so no cable has to pull.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder goes on the front of the chest strap.</extracomment>
        <translation>Der Rekorder speichert, was die Sensoren spüren. Auf der Brust ist er ihnen nah. Darum zieht kein Kabel.</translation>
    </message>
    <message id="step.recorder.harness.wear.title">
        <source>Put the harness on like a vest</source>
        <extracomment>Title of the page: the recorder sits in a harness of straps that is put on like a vest. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Trageweste anziehen</translation>
    </message>
    <message id="step.recorder.harness.wear.body">
        <source>Put 1 arm through, then the other. Close the strap in front. The recorder sits in the middle of your chest.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation>Stecken Sie erst 1 Arm durch, dann den anderen. Schließen Sie den Riemen vorn. Der Rekorder sitzt mitten auf der Brust.</translation>
    </message>
    <message id="step.recorder.harness.wear.right">
        <source>The recorder sits in the middle, and no strap rubs your neck.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation>Der Rekorder sitzt in der Mitte, und kein Riemen reibt am Hals.</translation>
    </message>
    <message id="step.recorder.harness.wear.why">
        <source>The harness holds the recorder still when you turn over in bed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder sits in a harness of straps that is put on like a vest.</extracomment>
        <translation>Die Trageweste hält den Rekorder ruhig, wenn Sie sich im Bett umdrehen.</translation>
    </message>
    <message id="step.plug.push.title">
        <source>Find the port with %1</source>
        <oldsource>Match the ridges: %1</oldsource>
        <extracomment>Title of the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in). Next to a picture of it. At most 45 characters. %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Passende Buchse suchen: %1</translation>
    </message>
    <message id="step.plug.push.body">
        <source>Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Push the plug straight in.</source>
        <oldsource>Feel the ridges on the plug: %1. Find the port on the recorder with just as many. Push the plug straight in.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder that has the same mark (the plug is pushed in). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Fühlen Sie die Markierung am Stecker: %1. Suchen Sie am Rekorder die Buchse mit der gleichen Markierung. Stecken Sie den Stecker gerade hinein.</translation>
    </message>
    <message id="step.plug.push.right">
        <source>It is in all the way. Plug and port both have %1.</source>
        <oldsource>It is in all the way. Ridges on plug and port: %1.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Er ist ganz drin. Markierung an Stecker und Buchse: %1.</translation>
    </message>
    <message id="step.plug.push.why">
        <source>Each plug has its own port. You can feel its mark with your thumb, even in the dark.</source>
        <oldsource>Each plug has its own port. You can feel the ridges with your thumb, even in the dark.</oldsource>
        <extracomment>Answer to &quot;Why this?&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in).</extracomment>
        <translation>Jeder Stecker hat seine eigene Buchse. Sie fühlen seine Markierung mit dem Daumen, auch im Dunkeln.</translation>
    </message>
    <message id="step.plug.push.smooth.title">
        <source>Push the smooth plug in</source>
        <extracomment>Title of the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in). Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Glatten Stecker hineinstecken</translation>
    </message>
    <message id="step.plug.push.smooth.body">
        <source>This plug is smooth: it has no mark. Find the smooth port on the recorder. Push the plug straight in.</source>
        <oldsource>This plug has no ridges. Find the port on the recorder that has none. Push the plug straight in.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation>Dieser Stecker ist glatt: Er hat keine Markierung. Suchen Sie die glatte Buchse am Rekorder. Stecken Sie den Stecker gerade hinein.</translation>
    </message>
    <message id="step.plug.push.smooth.right">
        <source>It is in all the way. Plug and port are both smooth.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation>Er ist ganz drin. Stecker und Buchse sind beide glatt.</translation>
    </message>
    <message id="step.plug.push.smooth.why">
        <source>Each plug has its own port. This one is smooth, so you can feel it even in the dark.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in).</extracomment>
        <translation>Jeder Stecker hat seine eigene Buchse. Dieser ist glatt, das fühlen Sie auch im Dunkeln.</translation>
    </message>
    <message id="step.plug.twist.title">
        <source>Find the port with %1</source>
        <oldsource>Match the ridges: %1</oldsource>
        <extracomment>Title of the page: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise). Next to a picture of it. At most 45 characters. %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Passende Buchse suchen: %1</translation>
    </message>
    <message id="step.plug.twist.body">
        <source>Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Push the plug in and turn it clockwise until it stops.</source>
        <oldsource>Feel the ridges on the plug: %1. Find the port on the recorder with just as many. Push the plug in and turn it clockwise until it stops.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Fühlen Sie die Markierung am Stecker: %1. Suchen Sie am Rekorder die Buchse mit der gleichen Markierung. Stecken Sie den Stecker hinein und drehen Sie ihn im Uhrzeigersinn, bis es nicht weitergeht.</translation>
    </message>
    <message id="step.plug.twist.right">
        <source>It turns no further. Plug and port both have %1.</source>
        <oldsource>It turns no further. Ridges on plug and port: %1.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Er dreht sich nicht weiter. Markierung an Stecker und Buchse: %1.</translation>
    </message>
    <message id="step.plug.twist.why">
        <source>Each plug has its own port. You can feel its mark with your thumb, even in the dark.</source>
        <oldsource>Each plug has its own port. You can feel the ridges with your thumb, even in the dark.</oldsource>
        <extracomment>Answer to &quot;Why this?&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Jeder Stecker hat seine eigene Buchse. Sie fühlen seine Markierung mit dem Daumen, auch im Dunkeln.</translation>
    </message>
    <message id="step.plug.twist.smooth.title">
        <source>Turn the smooth plug in</source>
        <extracomment>Title of the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise). Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Glatten Stecker hineindrehen</translation>
    </message>
    <message id="step.plug.twist.smooth.body">
        <source>This plug is smooth: it has no mark. Find the smooth port on the recorder. Push the plug in and turn it clockwise until it stops.</source>
        <oldsource>This plug has no ridges. Find the port on the recorder that has none. Push the plug in and turn it clockwise until it stops.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Dieser Stecker ist glatt: Er hat keine Markierung. Suchen Sie die glatte Buchse am Rekorder. Stecken Sie den Stecker hinein und drehen Sie ihn im Uhrzeigersinn, bis es nicht weitergeht.</translation>
    </message>
    <message id="step.plug.twist.smooth.right">
        <source>It turns no further. Plug and port are both smooth.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Er dreht sich nicht weiter. Stecker und Buchse sind beide glatt.</translation>
    </message>
    <message id="step.plug.twist.smooth.why">
        <source>Each plug has its own port. This one is smooth, so you can feel it even in the dark.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pushed in and turned clockwise).</extracomment>
        <translation>Jeder Stecker hat seine eigene Buchse. Dieser ist glatt, das fühlen Sie auch im Dunkeln.</translation>
    </message>
    <message id="step.plug.snap.title">
        <source>Find the port with %1</source>
        <oldsource>Match the ridges: %1</oldsource>
        <extracomment>Title of the page: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps). Next to a picture of it. At most 45 characters. %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Passende Buchse suchen: %1</translation>
    </message>
    <message id="step.plug.snap.body">
        <source>Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Press the plug until it snaps.</source>
        <oldsource>Feel the ridges on the plug: %1. Find the port on the recorder with just as many. Press the plug until it snaps.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Fühlen Sie die Markierung am Stecker: %1. Suchen Sie am Rekorder die Buchse mit der gleichen Markierung. Drücken Sie den Stecker, bis er einrastet.</translation>
    </message>
    <message id="step.plug.snap.right">
        <source>You felt it snap. Plug and port both have %1.</source>
        <oldsource>You felt it snap. Ridges on plug and port: %1.</oldsource>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps). %1 is the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Sie haben das Einrasten gespürt. Markierung an Stecker und Buchse: %1.</translation>
    </message>
    <message id="step.plug.snap.why">
        <source>Each plug has its own port. You can feel its mark with your thumb, even in the dark.</source>
        <oldsource>Each plug has its own port. You can feel the ridges with your thumb, even in the dark.</oldsource>
        <extracomment>Answer to &quot;Why this?&quot;: a plug goes into the port of the recorder that has the same mark (the plug is pressed until it snaps).</extracomment>
        <translation>Jeder Stecker hat seine eigene Buchse. Sie fühlen seine Markierung mit dem Daumen, auch im Dunkeln.</translation>
    </message>
    <message id="step.plug.snap.smooth.title">
        <source>Snap the smooth plug in</source>
        <extracomment>Title of the page: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps). Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Glatten Stecker eindrücken</translation>
    </message>
    <message id="step.plug.snap.smooth.body">
        <source>This plug is smooth: it has no mark. Find the smooth port on the recorder. Press the plug until it snaps.</source>
        <oldsource>This plug has no ridges. Find the port on the recorder that has none. Press the plug until it snaps.</oldsource>
        <extracomment>What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation>Dieser Stecker ist glatt: Er hat keine Markierung. Suchen Sie die glatte Buchse am Rekorder. Drücken Sie den Stecker, bis er einrastet.</translation>
    </message>
    <message id="step.plug.snap.smooth.right">
        <source>You felt it snap. Plug and port are both smooth.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation>Sie haben das Einrasten gespürt. Stecker und Buchse sind beide glatt.</translation>
    </message>
    <message id="step.plug.snap.smooth.why">
        <source>Each plug has its own port. This one is smooth, so you can feel it even in the dark.</source>
        <extracomment>Answer to &quot;Why this?&quot;: a smooth plug, without a mark, goes into the port of the recorder that has none (the plug is pressed until it snaps).</extracomment>
        <translation>Jeder Stecker hat seine eigene Buchse. Dieser ist glatt, das fühlen Sie auch im Dunkeln.</translation>
    </message>
    <message id="step.nasal_cannula.prongs.title">
        <source>Put the 2 prongs in your nose</source>
        <extracomment>Title of the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>2 Röhrchen in die Nase stecken</translation>
    </message>
    <message id="step.nasal_cannula.prongs.body">
        <source>Turn the soft prongs of the nose tube up, so that they curve toward you. Put 1 into each nostril.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation>Drehen Sie die weichen Röhrchen vom Nasenschlauch nach oben. Sie biegen sich zu Ihnen hin. Stecken Sie 1 Röhrchen in jedes Nasenloch.</translation>
    </message>
    <message id="step.nasal_cannula.prongs.right">
        <source>Both prongs sit in your nose, and you breathe with ease.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation>Beide Röhrchen sitzen in der Nase, und Sie atmen leicht.</translation>
    </message>
    <message id="step.nasal_cannula.prongs.why">
        <source>The nose tube feels the air as you breathe. Of all parts it slips the most, so take your time.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.</extracomment>
        <translation>Der Nasenschlauch spürt die Luft, wenn Sie atmen. Er rutscht leichter als alle anderen Teile. Nehmen Sie sich Zeit.</translation>
    </message>
    <message id="step.nasal_cannula.ears.title">
        <source>Put the tube over both ears</source>
        <extracomment>Title of the page: the tube is laid over both ears. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Schlauch über beide Ohren legen</translation>
    </message>
    <message id="step.nasal_cannula.ears.body">
        <source>Lead 1 side of the tube over each ear, from front to back. Keep the prongs in your nose.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the tube is laid over both ears.</extracomment>
        <translation>Führen Sie den Schlauch auf jeder Seite über das Ohr, von vorn nach hinten. Lassen Sie die Röhrchen in der Nase.</translation>
    </message>
    <message id="step.nasal_cannula.ears.right">
        <source>The tube lies behind both ears and does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the tube is laid over both ears.</extracomment>
        <translation>Der Schlauch liegt hinter beiden Ohren und zieht nicht.</translation>
    </message>
    <message id="step.nasal_cannula.ears.caution">
        <source>The tube must never go around your neck. From your ears it comes down in front, under your chin.</source>
        <extracomment>Caution in a box on this page: the tube is laid over both ears.</extracomment>
        <translation>Der Schlauch darf nie um den Hals liegen. Von den Ohren kommt er vorn nach unten, unter das Kinn.</translation>
    </message>
    <message id="step.nasal_cannula.chin.title">
        <source>Slide the tube snug under your chin</source>
        <extracomment>Title of the page: the small ring on the tube is slid up under the chin. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Ring unter das Kinn schieben</translation>
    </message>
    <message id="step.nasal_cannula.chin.body">
        <source>Slide the small ring up until it sits under your chin. Leave room to swallow.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the small ring on the tube is slid up under the chin.</extracomment>
        <translation>Schieben Sie den kleinen Ring hoch, bis er unter dem Kinn sitzt. Lassen Sie Platz zum Schlucken.</translation>
    </message>
    <message id="step.nasal_cannula.chin.right">
        <source>You can swallow and talk with ease.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the small ring on the tube is slid up under the chin.</extracomment>
        <translation>Sie können leicht schlucken und sprechen.</translation>
    </message>
    <message id="step.nasal_cannula.chin.why">
        <source>A snug tube keeps the prongs in your nose when you turn over.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the small ring on the tube is slid up under the chin.</extracomment>
        <translation>Liegt der Schlauch an, bleiben die Röhrchen in der Nase, wenn Sie sich umdrehen.</translation>
    </message>
    <message id="step.nasal_cannula.chin.caution">
        <source>Too tight can hurt you. Keep the tube under your chin, not around your throat, and lead it down under your clothes.</source>
        <extracomment>Caution in a box on this page: the small ring on the tube is slid up under the chin.</extracomment>
        <translation>Zu eng kann Sie verletzen. Der Schlauch bleibt unter dem Kinn, nicht um den Hals. Führen Sie ihn unter der Kleidung nach unten.</translation>
    </message>
    <message id="step.nasal_cannula.tape.title">
        <source>Tape the tube to your cheeks</source>
        <extracomment>Title of the page: the tube is taped to both cheeks. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Schlauch an die Wangen kleben</translation>
    </message>
    <message id="step.nasal_cannula.tape.body">
        <source>Lay 1 strip across the tube on each cheek. Press it down for a few seconds.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the tube is taped to both cheeks.</extracomment>
        <translation>Legen Sie auf jeder Wange 1 Streifen quer über den Schlauch. Drücken Sie ihn ein paar Sekunden lang fest.</translation>
    </message>
    <message id="step.nasal_cannula.tape.right">
        <source>Both strips lie flat, and the prongs stay in when you smile.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the tube is taped to both cheeks.</extracomment>
        <translation>Beide Streifen liegen flach. Die Röhrchen bleiben drin, wenn Sie lächeln.</translation>
    </message>
    <message id="step.nasal_cannula.tape.why">
        <source>The tape holds the tube when your cheek rubs on the pillow.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the tube is taped to both cheeks.</extracomment>
        <translation>Das Pflaster hält den Schlauch, wenn die Wange am Kissen reibt.</translation>
    </message>
    <message id="step.nasal_cannula.tape.caution">
        <source>Do not put tape on sore or broken skin, or if you are allergic to it. Call your clinic.</source>
        <extracomment>Caution in a box on this page: the tube is taped to both cheeks.</extracomment>
        <translation>Kein Pflaster auf wunde oder verletzte Haut. Kein Pflaster bei Pflasterallergie. Rufen Sie dann Ihre Klinik an.</translation>
    </message>
    <message id="step.nasal_cannula.join.push.title">
        <source>Push the tube on to the recorder</source>
        <extracomment>Title of the page: the end of the nose tube is pushed on to the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Schlauch auf den Rekorder schieben</translation>
    </message>
    <message id="step.nasal_cannula.join.push.body">
        <source>Find the short round nozzle on the recorder. Push the end of the tube on to it as far as it goes.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation>Suchen Sie den kurzen runden Stutzen am Rekorder. Schieben Sie das Ende vom Schlauch darauf, so weit es geht.</translation>
    </message>
    <message id="step.nasal_cannula.join.push.right">
        <source>It sits tight, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation>Er sitzt fest und hält, wenn Sie leicht ziehen.</translation>
    </message>
    <message id="step.nasal_cannula.join.push.why">
        <source>Your breath is felt through this tube. If it is loose, air gets out and your breath is missed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the end of the nose tube is pushed on to the recorder.</extracomment>
        <translation>Durch diesen Schlauch spürt der Rekorder Ihren Atem. Sitzt der Schlauch lose, geht Luft verloren, und der Atem wird nicht gespürt.</translation>
    </message>
    <message id="step.nasal_cannula.join.twist.title">
        <source>Turn the tube on to the recorder</source>
        <extracomment>Title of the page: the end of the nose tube is turned on to the recorder, clockwise. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Schlauch auf den Rekorder drehen</translation>
    </message>
    <message id="step.nasal_cannula.join.twist.body">
        <source>Put the end of the tube on the recorder. Turn it clockwise until it stops.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation>Setzen Sie das Ende vom Schlauch auf den Rekorder. Drehen Sie es im Uhrzeigersinn, bis es nicht weitergeht.</translation>
    </message>
    <message id="step.nasal_cannula.join.twist.right">
        <source>It turns no further, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation>Er dreht sich nicht weiter und hält, wenn Sie leicht ziehen.</translation>
    </message>
    <message id="step.nasal_cannula.join.twist.why">
        <source>Your breath is felt through this tube. If it is loose, air gets out and your breath is missed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the end of the nose tube is turned on to the recorder, clockwise.</extracomment>
        <translation>Durch diesen Schlauch spürt der Rekorder Ihren Atem. Sitzt der Schlauch lose, geht Luft verloren, und der Atem wird nicht gespürt.</translation>
    </message>
    <message id="step.nasal_cannula.join.snap.title">
        <source>Snap the tube on to the recorder</source>
        <extracomment>Title of the page: the end of the nose tube is pressed on to the recorder until it snaps. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Schlauch auf den Rekorder drücken</translation>
    </message>
    <message id="step.nasal_cannula.join.snap.body">
        <source>Press the end of the tube on to the recorder until it snaps.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation>Drücken Sie das Ende vom Schlauch auf den Rekorder, bis es einrastet.</translation>
    </message>
    <message id="step.nasal_cannula.join.snap.right">
        <source>You felt it snap, and a gentle pull does not move it.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation>Sie haben das Einrasten gespürt. Er hält, wenn Sie leicht ziehen.</translation>
    </message>
    <message id="step.nasal_cannula.join.snap.why">
        <source>Your breath is felt through this tube. If it is loose, air gets out and your breath is missed.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the end of the nose tube is pressed on to the recorder until it snaps.</extracomment>
        <translation>Durch diesen Schlauch spürt der Rekorder Ihren Atem. Sitzt der Schlauch lose, geht Luft verloren, und der Atem wird nicht gespürt.</translation>
    </message>
    <message id="step.breath_sensor.place.title">
        <source>Put the breath sensor under your nose</source>
        <extracomment>Title of the page: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Atemsensor unter die Nase setzen</translation>
    </message>
    <message id="step.breath_sensor.place.body">
        <source>It sits on the nose tube, above your upper lip. Its tips point to your nose and mouth, and touch no skin.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation>Er sitzt auf dem Nasenschlauch, über der Oberlippe. Seine Spitzen zeigen zu Nase und Mund und berühren keine Haut.</translation>
    </message>
    <message id="step.breath_sensor.place.right">
        <source>Its tips are in your breath, and none touches your skin.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation>Die Spitzen sind in Ihrem Atem, und keine berührt die Haut.</translation>
    </message>
    <message id="step.breath_sensor.place.why">
        <source>This sensor feels the warmth of each breath. On the skin it would feel only your skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the breath (thermal) sensor sits on the nose tube, above the lip, in the breath of nose and mouth.</extracomment>
        <translation>Dieser Sensor spürt die Wärme von jedem Atemzug. Auf der Haut spürt er nur die Haut.</translation>
    </message>
    <message id="step.finger_probe.place.left.title">
        <source>Put the clip on your left index finger</source>
        <extracomment>Title of the page: the finger clip goes on the index finger of the left hand. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Clip auf Ihren linken Zeigefinger stecken</translation>
    </message>
    <message id="step.finger_probe.place.left.body">
        <source>Hold your left hand nail side up. Push the index finger all the way into the clip. The cable runs along the back of your hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation>Drehen Sie Ihre linke Hand so, dass der Nagel oben ist. Schieben Sie den Zeigefinger ganz in den Clip. Das Kabel läuft über den Handrücken.</translation>
    </message>
    <message id="step.finger_probe.place.left.right">
        <source>The nail is up, and your fingertip touches the end of the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation>Der Nagel ist oben, und die Fingerspitze berührt das Ende vom Clip.</translation>
    </message>
    <message id="step.finger_probe.place.left.why">
        <source>The clip uses light to see how much oxygen is in your blood. It does not hurt. Your right hand stays free.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation>Der Clip misst mit Licht, wie viel Sauerstoff im Blut ist. Es tut nicht weh. Ihre rechte Hand bleibt frei.</translation>
    </message>
    <message id="step.finger_probe.place.left.caution">
        <source>The hand must be warm and the nail bare. Cold fingers and nail polish can spoil the reading. No clip on sore skin.</source>
        <extracomment>Caution in a box on this page: the finger clip goes on the index finger of the left hand.</extracomment>
        <translation>Die Hand muss warm und der Nagel frei sein. Kalte Finger und Nagellack können die Messung stören. Kein Clip auf wunde Haut.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.title">
        <source>Tape the cable to your left hand</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the back of the left hand while making a fist. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Kabel auf Ihre linke Hand kleben</translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.body">
        <source>Make a fist with your left hand. Press 1 strip over the cable on the back of the hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation>Machen Sie mit Ihrer linken Hand eine Faust. Drücken Sie 1 Streifen über das Kabel auf dem Handrücken.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.right">
        <source>You can make a fist, and the cable does not pull on the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation>Sie können eine Faust machen, und das Kabel zieht nicht am Clip.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.why">
        <source>The fist leaves some slack in the cable. So the clip stays on when your hand moves.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation>Durch die Faust bleibt das Kabel etwas locker. So bleibt der Clip dran, wenn sich die Hand bewegt.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.left.caution">
        <source>Do not put tape on sore or broken skin, or if you are allergic to it. Do not wrap tape around the hand or finger.</source>
        <extracomment>Caution in a box on this page: the cable of the finger clip is taped to the back of the left hand while making a fist.</extracomment>
        <translation>Kein Pflaster auf wunde oder verletzte Haut. Kein Pflaster bei Pflasterallergie. Wickeln Sie kein Pflaster um Hand oder Finger.</translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.title">
        <source>Tape the cable to your left forearm</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the left forearm. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Kabel auf Ihren linken Unterarm kleben</translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.body">
        <source>Lay the cable along your left arm. Press 1 strip over it, half way to the elbow.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation>Legen Sie das Kabel an Ihrem linken Arm entlang. Drücken Sie 1 Streifen darüber, auf halbem Weg zum Ellenbogen.</translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.right">
        <source>You can bend your arm, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation>Sie können den Arm beugen, und das Kabel zieht nicht.</translation>
    </message>
    <message id="step.finger_probe.tape_arm.left.why">
        <source>A cable that lies flat is less likely to catch on the bed or on you.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the left forearm.</extracomment>
        <translation>Liegt ein Kabel flach, bleibt es nicht so leicht am Bett oder an Ihnen hängen.</translation>
    </message>
    <message id="step.finger_probe.plug.left.title">
        <source>Plug in the finger clip last</source>
        <extracomment>Title of the page: last of all, the plug of the finger clip on the left hand goes into the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Fingerclip als Letztes einstecken</translation>
    </message>
    <message id="step.finger_probe.plug.left.body">
        <source>Sit down on your bed. With your right hand, put the plug of the clip into its port on the recorder.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation>Setzen Sie sich auf Ihr Bett. Stecken Sie mit Ihrer rechten Hand den Stecker vom Clip in seine Buchse am Rekorder.</translation>
    </message>
    <message id="step.finger_probe.plug.left.right">
        <source>The plug is in all the way, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation>Der Stecker ist ganz drin, und das Kabel zieht nicht.</translation>
    </message>
    <message id="step.finger_probe.plug.left.why">
        <source>This plug goes in last, so that both hands stay free until now.</source>
        <extracomment>Answer to &quot;Why this?&quot;: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation>Dieser Stecker kommt zuletzt. So waren bis jetzt beide Hände frei.</translation>
    </message>
    <message id="step.finger_probe.plug.left.caution">
        <source>Keep the cable along your left arm, never around your neck. Leave some slack.</source>
        <extracomment>Caution in a box on this page: last of all, the plug of the finger clip on the left hand goes into the recorder.</extracomment>
        <translation>Das Kabel bleibt an Ihrem linken Arm, nie um den Hals. Lassen Sie es etwas locker.</translation>
    </message>
    <message id="step.finger_probe.place.right.title">
        <source>Put the clip on your right index finger</source>
        <extracomment>Title of the page: the finger clip goes on the index finger of the right hand. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Clip auf Ihren rechten Zeigefinger stecken</translation>
    </message>
    <message id="step.finger_probe.place.right.body">
        <source>Hold your right hand nail side up. Push the index finger all the way into the clip. The cable runs along the back of your hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation>Drehen Sie Ihre rechte Hand so, dass der Nagel oben ist. Schieben Sie den Zeigefinger ganz in den Clip. Das Kabel läuft über den Handrücken.</translation>
    </message>
    <message id="step.finger_probe.place.right.right">
        <source>The nail is up, and your fingertip touches the end of the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation>Der Nagel ist oben, und die Fingerspitze berührt das Ende vom Clip.</translation>
    </message>
    <message id="step.finger_probe.place.right.why">
        <source>The clip uses light to see how much oxygen is in your blood. It does not hurt. Your left hand stays free.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation>Der Clip misst mit Licht, wie viel Sauerstoff im Blut ist. Es tut nicht weh. Ihre linke Hand bleibt frei.</translation>
    </message>
    <message id="step.finger_probe.place.right.caution">
        <source>The hand must be warm and the nail bare. Cold fingers and nail polish can spoil the reading. No clip on sore skin.</source>
        <extracomment>Caution in a box on this page: the finger clip goes on the index finger of the right hand.</extracomment>
        <translation>Die Hand muss warm und der Nagel frei sein. Kalte Finger und Nagellack können die Messung stören. Kein Clip auf wunde Haut.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.title">
        <source>Tape the cable to your right hand</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the back of the right hand while making a fist. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Kabel auf Ihre rechte Hand kleben</translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.body">
        <source>Make a fist with your right hand. Press 1 strip over the cable on the back of the hand.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation>Machen Sie mit Ihrer rechten Hand eine Faust. Drücken Sie 1 Streifen über das Kabel auf dem Handrücken.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.right">
        <source>You can make a fist, and the cable does not pull on the clip.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation>Sie können eine Faust machen, und das Kabel zieht nicht am Clip.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.why">
        <source>The fist leaves some slack in the cable. So the clip stays on when your hand moves.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation>Durch die Faust bleibt das Kabel etwas locker. So bleibt der Clip dran, wenn sich die Hand bewegt.</translation>
    </message>
    <message id="step.finger_probe.tape_hand.right.caution">
        <source>Do not put tape on sore or broken skin, or if you are allergic to it. Do not wrap tape around the hand or finger.</source>
        <extracomment>Caution in a box on this page: the cable of the finger clip is taped to the back of the right hand while making a fist.</extracomment>
        <translation>Kein Pflaster auf wunde oder verletzte Haut. Kein Pflaster bei Pflasterallergie. Wickeln Sie kein Pflaster um Hand oder Finger.</translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.title">
        <source>Tape the cable to your right forearm</source>
        <extracomment>Title of the page: the cable of the finger clip is taped to the right forearm. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Kabel auf Ihren rechten Unterarm kleben</translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.body">
        <source>Lay the cable along your right arm. Press 1 strip over it, half way to the elbow.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation>Legen Sie das Kabel an Ihrem rechten Arm entlang. Drücken Sie 1 Streifen darüber, auf halbem Weg zum Ellenbogen.</translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.right">
        <source>You can bend your arm, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation>Sie können den Arm beugen, und das Kabel zieht nicht.</translation>
    </message>
    <message id="step.finger_probe.tape_arm.right.why">
        <source>A cable that lies flat is less likely to catch on the bed or on you.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the cable of the finger clip is taped to the right forearm.</extracomment>
        <translation>Liegt ein Kabel flach, bleibt es nicht so leicht am Bett oder an Ihnen hängen.</translation>
    </message>
    <message id="step.finger_probe.plug.right.title">
        <source>Plug in the finger clip last</source>
        <extracomment>Title of the page: last of all, the plug of the finger clip on the right hand goes into the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Fingerclip als Letztes einstecken</translation>
    </message>
    <message id="step.finger_probe.plug.right.body">
        <source>Sit down on your bed. With your left hand, put the plug of the clip into its port on the recorder.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation>Setzen Sie sich auf Ihr Bett. Stecken Sie mit Ihrer linken Hand den Stecker vom Clip in seine Buchse am Rekorder.</translation>
    </message>
    <message id="step.finger_probe.plug.right.right">
        <source>The plug is in all the way, and the cable does not pull.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation>Der Stecker ist ganz drin, und das Kabel zieht nicht.</translation>
    </message>
    <message id="step.finger_probe.plug.right.why">
        <source>This plug goes in last, so that both hands stay free until now.</source>
        <extracomment>Answer to &quot;Why this?&quot;: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation>Dieser Stecker kommt zuletzt. So waren bis jetzt beide Hände frei.</translation>
    </message>
    <message id="step.finger_probe.plug.right.caution">
        <source>Keep the cable along your right arm, never around your neck. Leave some slack.</source>
        <extracomment>Caution in a box on this page: last of all, the plug of the finger clip on the right hand goes into the recorder.</extracomment>
        <translation>Das Kabel bleibt an Ihrem rechten Arm, nie um den Hals. Lassen Sie es etwas locker.</translation>
    </message>
    <message id="step.ecg_electrodes.place.title">
        <source>Stick the 2 heart pads on your chest</source>
        <extracomment>Title of the page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>2 EKG-Elektroden auf die Brust kleben</translation>
    </message>
    <message id="step.ecg_electrodes.place.body">
        <source>Stick 1 under your right collarbone and 1 on your lowest left rib. The skin must be bare and dry.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation>Kleben Sie 1 Elektrode unter Ihr rechtes Schlüsselbein und 1 auf Ihre unterste Rippe links. Die Haut muss frei und trocken sein.</translation>
    </message>
    <message id="step.ecg_electrodes.place.right">
        <source>Both pads stick flat all around.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation>Beide Elektroden kleben rundum flach.</translation>
    </message>
    <message id="step.ecg_electrodes.place.why">
        <source>The heart pads pick up your heartbeat through the skin.</source>
        <extracomment>Answer to &quot;Why this?&quot;: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation>Die EKG-Elektroden nehmen Ihren Herzschlag durch die Haut auf.</translation>
    </message>
    <message id="step.ecg_electrodes.place.caution">
        <source>Do not put pads on sore or broken skin, or if you are allergic to tape. Call your clinic.</source>
        <extracomment>Caution in a box on this page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right collarbone and on the lowest rib on the left.</extracomment>
        <translation>Keine Elektroden auf wunde oder verletzte Haut. Keine bei Pflasterallergie. Rufen Sie dann Ihre Klinik an.</translation>
    </message>
    <message id="step.body_position_sensor.place.title">
        <source>Put the position sensor on your chest belt</source>
        <extracomment>Title of the page: the body position sensor goes on the chest belt, arrow up. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Lagesensor am Brustgurt befestigen</translation>
    </message>
    <message id="step.body_position_sensor.place.body">
        <source>Fasten it in the middle of the belt. Its arrow points up to your head.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation>Befestigen Sie ihn in der Mitte vom Gurt. Der Pfeil zeigt nach oben zum Kopf.</translation>
    </message>
    <message id="step.body_position_sensor.place.right">
        <source>It lies flat, and the arrow points to your head.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation>Er liegt flach, und der Pfeil zeigt zum Kopf.</translation>
    </message>
    <message id="step.body_position_sensor.place.why">
        <source>It shows if you lie on your back, your side or your belly.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the body position sensor goes on the chest belt, arrow up.</extracomment>
        <translation>Er zeigt, ob Sie auf dem Rücken, der Seite oder dem Bauch liegen.</translation>
    </message>
    <message id="step.snore_microphone.place.title">
        <source>Tape the snore sensor to your neck</source>
        <extracomment>Title of the page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Schnarchsensor an den Hals kleben</translation>
    </message>
    <message id="step.snore_microphone.place.body">
        <source>Hum and feel for your voice box. Put the sensor beside it, on the side of your neck. Press 1 strip over it.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation>Summen Sie und fühlen Sie nach dem Kehlkopf. Setzen Sie den Sensor daneben, seitlich an den Hals. Drücken Sie 1 Streifen darüber.</translation>
    </message>
    <message id="step.snore_microphone.place.right">
        <source>It stays flat when you hum and turn your head.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation>Er bleibt flach, wenn Sie summen und den Kopf drehen.</translation>
    </message>
    <message id="step.snore_microphone.place.why">
        <source>It picks up the sound of snoring through the skin of your neck.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation>Er nimmt durch die Haut am Hals auf, wie Sie schnarchen.</translation>
    </message>
    <message id="step.snore_microphone.place.caution">
        <source>Lead its cable straight down under your clothes, never around your neck. No tape on sore skin or with a tape allergy.</source>
        <extracomment>Caution in a box on this page: the snore sensor (microphone) is taped to the side of the neck, next to the voice box.</extracomment>
        <translation>Führen Sie das Kabel unter der Kleidung gerade nach unten, nie um den Hals. Kein Pflaster auf wunde Haut. Kein Pflaster bei Pflasterallergie.</translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.title">
        <source>Stick the 2 pads on your left leg</source>
        <extracomment>Title of the page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>2 Elektroden auf Ihr linkes Bein kleben</translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.body">
        <source>Stick 1 above the other on the outer front of your left lower leg. Tape their cable flat with 1 strip.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation>Kleben Sie 1 Elektrode oben und 1 darunter, vorn außen auf Ihren linken Unterschenkel. Kleben Sie das Kabel mit 1 Streifen flach fest.</translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.right">
        <source>Both pads stick flat, and the cable does not pull when you bend your knee.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation>Beide Elektroden kleben flach, und das Kabel zieht nicht, wenn Sie das Knie beugen.</translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.why">
        <source>The pads pick up when the muscles of your left leg move in your sleep.</source>
        <extracomment>Answer to &quot;Why this?&quot;: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation>Die Elektroden nehmen auf, wenn sich die Muskeln in Ihrem linken Bein im Schlaf bewegen.</translation>
    </message>
    <message id="step.leg_electrodes.left_leg.place.caution">
        <source>Do not put pads or tape on sore or broken skin, or if you are allergic to tape. Call your clinic.</source>
        <extracomment>Caution in a box on this page: 2 pads (leg electrodes) stick on the outer front of the left lower leg; tape holds their cable.</extracomment>
        <translation>Keine Elektroden und kein Pflaster auf wunde oder verletzte Haut. Beides nicht bei Pflasterallergie. Rufen Sie dann Ihre Klinik an.</translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.title">
        <source>Stick the 2 pads on your right leg</source>
        <extracomment>Title of the page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>2 Elektroden auf Ihr rechtes Bein kleben</translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.body">
        <source>Stick 1 above the other on the outer front of your right lower leg. Tape their cable flat with 1 strip.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation>Kleben Sie 1 Elektrode oben und 1 darunter, vorn außen auf Ihren rechten Unterschenkel. Kleben Sie das Kabel mit 1 Streifen flach fest.</translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.right">
        <source>Both pads stick flat, and the cable does not pull when you bend your knee.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation>Beide Elektroden kleben flach, und das Kabel zieht nicht, wenn Sie das Knie beugen.</translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.why">
        <source>The pads pick up when the muscles of your right leg move in your sleep.</source>
        <extracomment>Answer to &quot;Why this?&quot;: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation>Die Elektroden nehmen auf, wenn sich die Muskeln in Ihrem rechten Bein im Schlaf bewegen.</translation>
    </message>
    <message id="step.leg_electrodes.right_leg.place.caution">
        <source>Do not put pads or tape on sore or broken skin, or if you are allergic to tape. Call your clinic.</source>
        <extracomment>Caution in a box on this page: 2 pads (leg electrodes) stick on the outer front of the right lower leg; tape holds their cable.</extracomment>
        <translation>Keine Elektroden und kein Pflaster auf wunde oder verletzte Haut. Beides nicht bei Pflasterallergie. Rufen Sie dann Ihre Klinik an.</translation>
    </message>
    <message id="step.check.title">
        <source>Look at each part once more</source>
        <extracomment>Title of the page: after the last plug: each sensor is looked at once more. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Jedes Teil noch einmal ansehen</translation>
    </message>
    <message id="step.check.body">
        <source>Look at each sensor from head to toe. Fix what is loose.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: after the last plug: each sensor is looked at once more.</extracomment>
        <translation>Sehen Sie jeden Sensor an, von Kopf bis Fuß. Befestigen Sie, was lose ist.</translation>
    </message>
    <message id="step.check.right">
        <source>Each part looks like its picture, and no plug is loose.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: after the last plug: each sensor is looked at once more.</extracomment>
        <translation>Jedes Teil sieht aus wie auf seinem Bild, und kein Stecker ist lose.</translation>
    </message>
    <message id="step.check.caution">
        <source>No tube or cable may lie around your neck. Keep children and pets away from the cables.</source>
        <extracomment>Caution in a box on this page: after the last plug: each sensor is looked at once more.</extracomment>
        <translation>Kein Schlauch und kein Kabel darf um den Hals liegen. Halten Sie Kinder und Tiere von den Kabeln fern.</translation>
    </message>
    <message id="step.start.switch.title">
        <source>Turn the recorder on</source>
        <extracomment>Title of the page: the recorder is started with a sliding switch. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Rekorder einschalten</translation>
    </message>
    <message id="step.start.switch.body">
        <source>Slide the switch on the recorder until it stops.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder is started with a sliding switch.</extracomment>
        <translation>Schieben Sie den Schalter am Rekorder ganz bis zum Ende.</translation>
    </message>
    <message id="step.start.switch.right">
        <source>The switch is at its end and stays there.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder is started with a sliding switch.</extracomment>
        <translation>Der Schalter ist am Ende und bleibt dort.</translation>
    </message>
    <message id="step.start.switch.why">
        <source>From now on the recorder saves your night.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder is started with a sliding switch.</extracomment>
        <translation>Ab jetzt speichert der Rekorder Ihre Nacht.</translation>
    </message>
    <message id="step.start.set_time.title">
        <source>The recorder starts by itself</source>
        <extracomment>Title of the page: the recorder starts by itself at a set time. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Der Rekorder startet von selbst</translation>
    </message>
    <message id="step.start.set_time.body">
        <source>It starts at a set time. You do not have to press anything.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the recorder starts by itself at a set time.</extracomment>
        <translation>Er startet zu einer festen Zeit. Sie müssen nichts drücken.</translation>
    </message>
    <message id="step.start.set_time.right">
        <source>All plugs are in. You pressed nothing.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the recorder starts by itself at a set time.</extracomment>
        <translation>Alle Stecker sind drin. Sie haben nichts gedrückt.</translation>
    </message>
    <message id="step.start.set_time.why">
        <source>Your clinic has set the time, so this is 1 thing less for you to do.</source>
        <extracomment>Answer to &quot;Why this?&quot;: the recorder starts by itself at a set time.</extracomment>
        <translation>Ihre Klinik hat die Zeit eingestellt. So müssen Sie 1 Sache weniger tun.</translation>
    </message>
    <message id="step.light.title">
        <source>See what the light does</source>
        <extracomment>Title of the page: the person looks at the recorder&apos;s light and says what it does. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Sehen, was das Lämpchen macht</translation>
    </message>
    <message id="step.light.body">
        <source>Look at the light on the recorder for a few seconds. Then tap what you see.</source>
        <extracomment>What to do on this page, 1 or 2 short sentences: the person looks at the recorder&apos;s light and says what it does.</extracomment>
        <translation>Sehen Sie ein paar Sekunden lang auf das Lämpchen am Rekorder. Tippen Sie dann an, was Sie sehen.</translation>
    </message>
    <message id="step.light.right">
        <source>The light shows that the recorder is recording.</source>
        <extracomment>Stands under the heading &quot;It is right when&quot;: the person looks at the recorder&apos;s light and says what it does.</extracomment>
        <translation>Das Lämpchen zeigt, dass der Rekorder aufzeichnet.</translation>
    </message>
    <message id="q.tried_to_sleep_after_waking.title">
        <source>How long did you try to sleep after that?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters. After the final waking: staying in bed and trying to sleep again.</extracomment>
        <translation>Wie lange versuchten Sie danach zu schlafen?</translation>
    </message>
    <message id="q.tried_to_sleep_after_waking.short">
        <source>Trying to sleep after that</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Danach Schlaf versucht</translation>
    </message>
    <message id="q.slept.title">
        <source>How long did you sleep, all in all?</source>
        <extracomment>Question in the morning, the title of its page. At most 45 characters. The person&apos;s own idea.</extracomment>
        <translation>Wie lange haben Sie insgesamt geschlafen?</translation>
    </message>
    <message id="q.slept.short">
        <source>Sleep, all in all</source>
        <extracomment>The same question in 2 or 3 words, for the list of answers.</extracomment>
        <translation>Schlaf insgesamt</translation>
    </message>
    <message id="answer.hours_minutes">
        <source>%1 h %2 min</source>
        <extracomment>A length of time. %1 hours and %2 minutes; both may be 0.</extracomment>
        <translation>%1&#xa0;Std. %2&#xa0;Min.</translation>
    </message>
    <message id="amount.hour">
        <source>1 h</source>
        <extracomment>On a button that makes a length of time longer or shorter by this much.</extracomment>
        <translation>1 Std.</translation>
    </message>
    <message id="puzzle.recording_from">
        <source>Recording seen to start</source>
        <extracomment>Name of a time that nobody asked about: the recorder&apos;s light showed that it records.</extracomment>
        <translation>Start der Aufzeichnung gesehen</translation>
    </message>
    <message id="puzzle.recording_to">
        <source>Recorder stopped</source>
        <extracomment>Name of a time that nobody asked about: the person switched the recorder off.</extracomment>
        <translation>Rekorder gestoppt</translation>
    </message>
    <message id="hour.note_twice">
        <source>%1 came twice that night. We will ask which one.</source>
        <extracomment>Note beside a time, on the night when the clocks go back. %1 is a time.</extracomment>
        <translation>Die Uhrzeit %1 gab es in dieser Nacht zweimal. Wir fragen noch, welche Sie meinen.</translation>
    </message>
    <message id="hour.note_never">
        <source>%1 did not come that night. We will ask what you mean.</source>
        <extracomment>Note beside a time, on the night when the clocks go forward. %1 is a time.</extracomment>
        <translation>Die Uhrzeit %1 gab es in dieser Nacht nicht. Wir fragen noch, was Sie meinen.</translation>
    </message>
    <message id="hour.note_either">
        <source>%1, the first or the second one</source>
        <extracomment>Note beside a time that came twice; the person does not know which of the two it was.</extracomment>
        <translation>%1, beim ersten oder beim zweiten Mal</translation>
    </message>
    <message id="hour.twice">
        <source>%1 came twice that night. Which one do you mean?</source>
        <extracomment>Question, on the night when the clocks go back. %1 is a time.</extracomment>
        <translation>Die Uhrzeit %1 gab es in dieser Nacht zweimal. Welche meinen Sie?</translation>
    </message>
    <message id="hour.twice_why">
        <source>The clocks went back, so one hour came 2 times.</source>
        <extracomment>Under that question.</extracomment>
        <translation>Die Uhr wurde zurückgestellt. Darum gab es eine Stunde zweimal.</translation>
    </message>
    <message id="hour.never">
        <source>%1 did not come that night. Which time do you mean?</source>
        <extracomment>Question, on the night when the clocks go forward. %1 is a time.</extracomment>
        <translation>Die Uhrzeit %1 gab es in dieser Nacht nicht. Welche Zeit meinen Sie?</translation>
    </message>
    <message id="hour.never_why">
        <source>The clocks went forward and left it out.</source>
        <extracomment>Under that question.</extracomment>
        <translation>Die Uhr wurde vorgestellt. Darum fiel diese Zeit aus.</translation>
    </message>
    <message id="hour.before_back">
        <source>%1, before the clocks went back</source>
        <extracomment>One of 2 answers: which of 2 equal times. %1 is a time.</extracomment>
        <translation>%1, bevor die Uhr zurückgestellt wurde</translation>
    </message>
    <message id="hour.after_back">
        <source>%1, after the clocks went back</source>
        <extracomment>One of 2 answers: which of 2 equal times. %1 is a time.</extracomment>
        <translation>%1, nachdem die Uhr zurückgestellt wurde</translation>
    </message>
    <message id="hour.before_forward">
        <source>%1, before the clocks went forward</source>
        <extracomment>One of 2 answers. %1 is a time.</extracomment>
        <translation>%1, bevor die Uhr vorgestellt wurde</translation>
    </message>
    <message id="hour.after_forward">
        <source>%1, after the clocks went forward</source>
        <extracomment>One of 2 answers. %1 is a time.</extracomment>
        <translation>%1, nachdem die Uhr vorgestellt wurde</translation>
    </message>
    <message id="hour.first">
        <source>%1 (the first)</source>
        <extracomment>A time that came twice that night: the first of the two. %1 is a time.</extracomment>
        <translation>%1 (das erste Mal)</translation>
    </message>
    <message id="hour.second">
        <source>%1 (the second)</source>
        <extracomment>A time that came twice that night: the second of the two. %1 is a time.</extracomment>
        <translation>%1 (das zweite Mal)</translation>
    </message>
    <message id="welcome.build">
        <source>Tap the drawing that is most like you, if you wish.</source>
        <extracomment>Small words on the first page, over 3 drawn persons to choose from. Optional.</extracomment>
        <translation>Wenn Sie möchten: Tippen Sie die Zeichnung an, die Ihnen am ähnlichsten ist.</translation>
    </message>
    <message id="welcome.build.slim">
        <source>Drawing 1, slim</source>
        <extracomment>Name of a drawn person, for screen readers only.</extracomment>
        <translation>Zeichnung 1, schlank</translation>
    </message>
    <message id="welcome.build.medium">
        <source>Drawing 2, in between</source>
        <extracomment>Name of a drawn person, for screen readers only.</extracomment>
        <translation>Zeichnung 2, mittel</translation>
    </message>
    <message id="welcome.build.broad">
        <source>Drawing 3, broad</source>
        <extracomment>Name of a drawn person, for screen readers only.</extracomment>
        <translation>Zeichnung 3, breit</translation>
    </message>
    <message id="step.breath_guide">
        <source>Breathe with it. Close the belt when the air is out.</source>
        <oldsource>Breathe with the shape. Close the belt when the air is out.</oldsource>
        <extracomment>Beside a shape that widens and narrows with a calm breath, on the pages of the belts.</extracomment>
        <translation>Atmen Sie mit. Schließen Sie den Gurt, wenn die Luft draußen ist.</translation>
    </message>
    <message id="evening.day.title">
        <source>Was today a usual day?</source>
        <extracomment>Question of the evening. It may be skipped.</extracomment>
        <translation>War heute ein normaler Tag?</translation>
    </message>
    <message id="evening.day.usual">
        <source>Yes, a usual day</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Ja, ein normaler Tag</translation>
    </message>
    <message id="evening.day.unusual">
        <source>No, not usual</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Nein, nicht normal</translation>
    </message>
    <message id="evening.nap.title">
        <source>Did you nap today?</source>
        <extracomment>Question of the evening. It may be skipped.</extracomment>
        <translation>Haben Sie heute tagsüber geschlafen?</translation>
    </message>
    <message id="evening.nap.none">
        <source>No nap</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Nein</translation>
    </message>
    <message id="evening.nap.short">
        <source>Less than 30 minutes</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Weniger als 30 Minuten</translation>
    </message>
    <message id="evening.nap.long">
        <source>30 minutes or more</source>
        <extracomment>Answer to it.</extracomment>
        <translation>30 Minuten oder mehr</translation>
    </message>
    <message id="evening.caffeine.title">
        <source>When was your last coffee, tea or cola?</source>
        <extracomment>Question of the evening: the last drink of the day with caffeine. It may be skipped.</extracomment>
        <translation>Wann hatten Sie zuletzt Kaffee, Tee oder Cola?</translation>
    </message>
    <message id="evening.caffeine.none">
        <source>None after noon</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Nichts nach 12 Uhr</translation>
    </message>
    <message id="evening.caffeine.afternoon">
        <source>In the afternoon</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Am Nachmittag</translation>
    </message>
    <message id="evening.caffeine.evening">
        <source>In the evening</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Am Abend</translation>
    </message>
    <message id="evening.alcohol.title">
        <source>Did you drink alcohol this evening?</source>
        <extracomment>Question of the evening. No blame. It may be skipped.</extracomment>
        <translation>Haben Sie heute Abend Alkohol getrunken?</translation>
    </message>
    <message id="evening.alcohol.none">
        <source>No</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Nein</translation>
    </message>
    <message id="evening.alcohol.little">
        <source>1 or 2 drinks</source>
        <extracomment>Answer to it.</extracomment>
        <translation>1 oder 2 Gläser</translation>
    </message>
    <message id="evening.alcohol.more">
        <source>3 or more drinks</source>
        <extracomment>Answer to it.</extracomment>
        <translation>3 oder mehr Gläser</translation>
    </message>
    <message id="evening.medicines.title">
        <source>Did you take your medicines as usual?</source>
        <extracomment>Question of the evening. It advises nothing. It may be skipped.</extracomment>
        <translation>Haben Sie Ihre Medikamente wie sonst genommen?</translation>
    </message>
    <message id="evening.medicines.usual">
        <source>Yes, or I take none</source>
        <extracomment>Answer to it. Also right for somebody who takes none.</extracomment>
        <translation>Ja, oder ich nehme keine</translation>
    </message>
    <message id="evening.medicines.missed">
        <source>I left some out</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Ich habe etwas ausgelassen</translation>
    </message>
    <message id="evening.medicines.other">
        <source>I took something else</source>
        <extracomment>Answer to it.</extracomment>
        <translation>Ich habe etwas anderes genommen</translation>
    </message>
    <message id="signal.calm.title">
        <source>Breathe calmly</source>
        <extracomment>Signal check: title. The person does this for some seconds while the recorder runs.</extracomment>
        <translation>Ruhig atmen</translation>
    </message>
    <message id="signal.calm.body">
        <source>A short check of the sensors. Sit or lie still and breathe as you like.</source>
        <extracomment>Under it.</extracomment>
        <translation>Eine kurze Prüfung der Sensoren. Sitzen oder liegen Sie still und atmen Sie, wie Sie mögen.</translation>
    </message>
    <message id="signal.deep.title">
        <source>Take 3 deep breaths</source>
        <extracomment>Signal check: title.</extracomment>
        <translation>3&#xa0;Mal tief atmen</translation>
    </message>
    <message id="signal.deep.body">
        <source>Breathe in deep through your nose, then out. Do it 3 times.</source>
        <extracomment>Under it.</extracomment>
        <translation>Atmen Sie tief durch die Nase ein, dann aus. Tun Sie das 3&#xa0;Mal.</translation>
    </message>
    <message id="signal.hold.title">
        <source>Hold your breath</source>
        <extracomment>Signal check: title.</extracomment>
        <translation>Luft anhalten</translation>
    </message>
    <message id="signal.hold.body">
        <source>Breathe out, then hold your breath. Stop at once if it does not feel good. You can skip this.</source>
        <extracomment>Under it. Nobody is to hold the breath who does not feel well doing so.</extracomment>
        <translation>Atmen Sie aus und halten Sie dann die Luft an. Hören Sie sofort auf, wenn es sich nicht gut anfühlt. Sie können das auslassen.</translation>
    </message>
    <message id="signal.finger.title">
        <source>Move the finger with the clip</source>
        <extracomment>Signal check: title.</extracomment>
        <translation>Den Finger mit dem Clip bewegen</translation>
    </message>
    <message id="signal.finger.body">
        <source>Bend and stretch that finger a few times. Leave the clip on.</source>
        <extracomment>Under it.</extracomment>
        <translation>Beugen und strecken Sie diesen Finger ein paarmal. Lassen Sie den Clip dran.</translation>
    </message>
    <message id="signal.start">
        <source>Start</source>
        <extracomment>Large button: begins that task; a number counts down.</extracomment>
        <translation>Start</translation>
    </message>
    <message id="signal.running">
        <source>Keep going</source>
        <extracomment>The same button while the number counts down; it cannot be tapped.</extracomment>
        <translation>Weitermachen</translation>
    </message>
    <message id="signal.now">
        <source>Now</source>
        <extracomment>Over the number that counts down.</extracomment>
        <translation>Jetzt</translation>
    </message>
    <message id="signal.skip">
        <source>Skip this</source>
        <extracomment>Button: leaves this task out.</extracomment>
        <translation>Auslassen</translation>
    </message>
    <message id="unit.seconds">
        <source>seconds</source>
        <extracomment>Unit beside a number that counts down.</extracomment>
        <translation>Sekunden</translation>
    </message>
    <message id="unit.times">
        <source>times</source>
        <extracomment>Unit beside a number: how often.</extracomment>
        <translation>Mal</translation>
    </message>
    <message id="event.untimed.add">
        <source>I was awake, but I do not know when</source>
        <extracomment>Button: the person was awake some times but does not know when.</extracomment>
        <translation>Ich war wach, aber ich weiß nicht, wann</translation>
    </message>
    <message id="event.untimed.times">
        <source>About how many times?</source>
        <extracomment>Question after that button.</extracomment>
        <translation>Wie oft etwa?</translation>
    </message>
    <message id="event.untimed.minutes">
        <source>How long were you awake, all in all?</source>
        <extracomment>Question after that one: all these times together.</extracomment>
        <translation>Wie lange waren Sie insgesamt wach?</translation>
    </message>
    <message id="answer.untimed">
        <source>Awake, hour not known. How many times: %1. Minutes in all: %2</source>
        <extracomment>Times awake that nobody knows the hour of. %1: how many. %2: minutes together.</extracomment>
        <translation>Wach, Uhrzeit nicht bekannt. Wie oft: %1. Minuten insgesamt: %2</translation>
    </message>
    <message id="morning.gap">
        <source>This tablet was off for some time between %1 and %2. Please add what it could not note.</source>
        <extracomment>In the morning, when the tablet was off in the night. %1 and %2 are times.</extracomment>
        <translation>Dieses Tablet war zwischen %1 und %2 eine Zeit lang aus. Bitte ergänzen Sie, was es nicht notieren konnte.</translation>
    </message>
    <message id="q.hint.gap">
        <source>The tablet was off for some time between %1 and %2. Did anything happen then?</source>
        <extracomment>Under a question about the night, for the same reason. %1 and %2 are times.</extracomment>
        <translation>Das Tablet war zwischen %1 und %2 eine Zeit lang aus. Ist da etwas passiert?</translation>
    </message>
    <message id="finished.skin">
        <source>Look at your skin once more at %1. Leave this page open and we will ask.</source>
        <extracomment>On the last page. %1 is a time.</extracomment>
        <translation>Sehen Sie um %1 Uhr noch einmal Ihre Haut an. Lassen Sie diese Seite offen, dann fragen wir Sie.</translation>
    </message>
    <message id="skin.again.title">
        <source>Look at your skin once more</source>
        <extracomment>Title half an hour after the tape came off.</extracomment>
        <translation>Haut noch einmal ansehen</translation>
    </message>
    <message id="skin.again.hurt">
        <source>Do not rub or cover the spot. Call your clinic: %1.</source>
        <extracomment>Half an hour later, when the skin is still sore. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Reiben Sie die Stelle nicht und decken Sie sie nicht ab. Rufen Sie Ihre Klinik an: %1.</translation>
    </message>
    <message id="trouble.no_place.title">
        <source>The place for your diary is missing</source>
        <extracomment>Title of a page of trouble. No blame.</extracomment>
        <translation>Der Ort für Ihr Tagebuch fehlt</translation>
    </message>
    <message id="trouble.no_place.body">
        <source>All your notes are safe. If there is a memory stick, put it in and try again. If not, call your clinic. %1</source>
        <extracomment>Under that title. The place is a folder, or a memory stick. %1 is the clinic&apos;s phone number; it may be missing, so it stands alone at the end.</extracomment>
        <translation>Alle Ihre Notizen sind sicher. Gibt es einen USB-Stick, stecken Sie ihn ein und versuchen Sie es noch einmal. Wenn nicht, rufen Sie Ihre Klinik an. %1</translation>
    </message>
    <message id="sheet.title">
        <source>Your sleep test at home</source>
        <extracomment>Title of the printed sheet that goes home with the kit.</extracomment>
        <translation>Ihr Schlaftest zu Hause</translation>
    </message>
    <message id="sheet.call">
        <source>Questions or trouble? Call</source>
        <extracomment>Sheet, over the clinic&apos;s phone number in very large type.</extracomment>
        <translation>Fragen oder Probleme? Anrufen:</translation>
    </message>
    <message id="sheet.code">
        <source>Study code</source>
        <extracomment>Sheet, small, over the study code, such as SM-0417.</extracomment>
        <translation>Code des Schlaftests</translation>
    </message>
    <message id="sheet.qr">
        <source>QR code with the study code %1</source>
        <extracomment>Sheet: said by a screen reader in place of the square code. %1 is the study code.</extracomment>
        <translation>QR-Code mit dem Code des Schlaftests %1</translation>
    </message>
    <message id="sheet.bag.title">
        <source>What is in the bag</source>
        <extracomment>Heading on the sheet, over the list of the things in the bag.</extracomment>
        <translation>Was in der Tasche ist</translation>
    </message>
    <message id="sheet.bag.missing">
        <source>Is something missing? Call your clinic: %1.</source>
        <extracomment>Sheet, under that list. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Fehlt etwas? Rufen Sie Ihre Klinik an: %1.</translation>
    </message>
    <message id="sheet.before.title">
        <source>Before bed</source>
        <extracomment>Heading on the sheet: what to do before the kit is put on.</extracomment>
        <translation>Vor dem Schlafengehen</translation>
    </message>
    <message id="sheet.before.start">
        <source>Start at %1. Then you are in bed by about %2.</source>
        <extracomment>Sheet, under that heading. %1 and %2 are times of day.</extracomment>
        <translation>Fangen Sie um %1 Uhr an. Dann sind Sie gegen %2 Uhr im Bett.</translation>
    </message>
    <message id="sheet.on.title">
        <source>Put the kit on</source>
        <extracomment>Heading on the sheet, over the numbered steps with pictures.</extracomment>
        <translation>Set anlegen</translation>
    </message>
    <message id="sheet.like">
        <source>Do it as in step %1.</source>
        <extracomment>Sheet: a step that is done in the same way as one before it. %1 is the number of that step.</extracomment>
        <translation>Machen Sie es wie in Schritt %1.</translation>
    </message>
    <message id="sheet.light.title">
        <source>The light on the recorder</source>
        <extracomment>Heading on the sheet: what the recorder&apos;s light can look like and what it means.</extracomment>
        <translation>Das Lämpchen am Rekorder</translation>
    </message>
    <message id="sheet.light.body">
        <source>Look at the light for a few seconds. It may take %1 seconds to come on.</source>
        <extracomment>Sheet, under that heading. %1 is a number of seconds.</extracomment>
        <translation>Sehen Sie ein paar Sekunden lang auf das Lämpchen. Es kann %1 Sekunden dauern, bis es angeht.</translation>
    </message>
    <message id="sheet.light.other">
        <source>Does the light do something else? Call your clinic: %1.</source>
        <extracomment>Sheet, under the list of what the light can look like. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Macht das Lämpchen etwas anderes? Rufen Sie Ihre Klinik an: %1.</translation>
    </message>
    <message id="sheet.light.start_again">
        <source>Start the recorder once more. Then look at the light again.</source>
        <extracomment>Sheet: what to do when the light shows that the recorder did not start.</extracomment>
        <translation>Starten Sie den Rekorder noch einmal. Sehen Sie dann wieder auf das Lämpchen.</translation>
    </message>
    <message id="sheet.light.call_clinic">
        <source>Call your clinic: %1.</source>
        <extracomment>Sheet: what to do when the light shows a fault. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Rufen Sie Ihre Klinik an: %1.</translation>
    </message>
    <message id="sheet.night.title">
        <source>In the night</source>
        <extracomment>Heading on the sheet.</extracomment>
        <translation>In der Nacht</translation>
    </message>
    <message id="sheet.night.up">
        <source>I have to get up</source>
        <extracomment>Sheet, in the night, as the person would say it.</extracomment>
        <translation>Ich muss aufstehen</translation>
    </message>
    <message id="sheet.night.up.advice">
        <source>Free the cables first, then walk. Back in bed, see that each part is still on.</source>
        <extracomment>Sheet: what to do then.</extracomment>
        <translation>Machen Sie erst die Kabel frei, dann gehen Sie. Wieder im Bett: Prüfen Sie, ob jedes Teil noch sitzt.</translation>
    </message>
    <message id="sheet.night.off.advice">
        <source>Put it back on as in its step. Then look at the light on the recorder.</source>
        <extracomment>Sheet: what to do when something came off in the night. &quot;Its step&quot; is the numbered step with the picture of that part.</extracomment>
        <translation>Bringen Sie es wieder an, so wie in seinem Schritt. Sehen Sie dann auf das Lämpchen am Rekorder.</translation>
    </message>
    <message id="sheet.night.light.advice">
        <source>Push each plug in once more and look again. Still wrong? Call %1, or keep the kit on and sleep.</source>
        <extracomment>Sheet: what to do when the light looks wrong in the night. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Drücken Sie jeden Stecker noch einmal fest hinein und sehen Sie wieder hin. Stimmt es noch nicht? Rufen Sie %1 an. Oder lassen Sie das Set an und schlafen Sie.</translation>
    </message>
    <message id="sheet.morning.title">
        <source>In the morning</source>
        <extracomment>Heading on the sheet: the diary, then taking the kit off.</extracomment>
        <translation>Am Morgen</translation>
    </message>
    <message id="sheet.morning.diary">
        <source>Leave the kit on for now. Fill in the paper diary on the last page first. Then take the kit off.</source>
        <extracomment>Sheet, under that heading. The diary is the last page of the sheet.</extracomment>
        <translation>Lassen Sie das Set noch an. Füllen Sie erst das Tagebuch auf der letzten Seite aus. Nehmen Sie dann das Set ab.</translation>
    </message>
    <message id="sheet.pack.body">
        <source>Put each part in the bag and tick it here.</source>
        <extracomment>Sheet, over the list of what goes back to the clinic; each has a box to tick.</extracomment>
        <translation>Legen Sie jedes Teil in die Tasche und haken Sie es hier ab.</translation>
    </message>
    <message id="sheet.pack.diary">
        <source>this sheet with the paper diary</source>
        <extracomment>Sheet: one more thing in that list, lower case.</extracomment>
        <translation>dieses Blatt mit dem Tagebuch auf Papier</translation>
    </message>
    <message id="sheet.diary.title">
        <source>Paper diary</source>
        <extracomment>Title of the page on which the person writes down the night.</extracomment>
        <translation>Tagebuch auf Papier</translation>
    </message>
    <message id="sheet.diary.evening">
        <source>Date of the evening</source>
        <extracomment>Paper diary: stands before a line on which the person writes the date of the evening.</extracomment>
        <translation>Datum vom Abend</translation>
    </message>
    <message id="sheet.diary.how">
        <source>Fill this in when you wake up. In each row, draw a line from start to end. Your best guess is fine. Leave out what you do not know.</source>
        <extracomment>Paper diary, over a grid with one row for each thing and the hours of the night across.</extracomment>
        <translation>Füllen Sie das nach dem Aufwachen aus. Ziehen Sie in jeder Zeile eine Linie von Anfang bis Ende. Schätzen Sie, so gut Sie können. Lassen Sie aus, was Sie nicht wissen.</translation>
    </message>
    <message id="sheet.diary.lights_out">
        <source>Light was out</source>
        <extracomment>Paper diary, name of a row of the grid: from lights out to lights on. At most 20 characters.</extracomment>
        <translation>Licht war aus</translation>
    </message>
    <message id="sheet.diary.awake">
        <source>Awake</source>
        <extracomment>Paper diary, name of a row of the grid: times awake. At most 20 characters.</extracomment>
        <translation>Wach</translation>
    </message>
    <message id="sheet.diary.off">
        <source>Off: %1</source>
        <extracomment>Paper diary, name of a row of the grid: while this part was off. %1 is a part.</extracomment>
        <translation>Gelöst: %1</translation>
    </message>
    <message id="sheet.diary.hours">
        <source>hours</source>
        <extracomment>Paper diary: unit after the line on which the person writes how long they slept.</extracomment>
        <translation>Stunden</translation>
    </message>
    <message id="desk.back">
        <source>Back to the front desk</source>
        <extracomment>Button: back to the clinic&apos;s own part of the app.</extracomment>
        <translation>Zurück zum Empfang</translation>
    </message>
    <message id="desk.open">
        <source>For clinic staff</source>
        <extracomment>Button on the first and the last page of a night, small: staff of the clinic open their part.</extracomment>
        <translation>Für das Personal der Klinik</translation>
    </message>
    <message id="desk.busy">
        <source>One moment ...</source>
        <extracomment>Front desk: something is being done that takes a moment.</extracomment>
        <translation>Einen Moment&#xa0;…</translation>
    </message>
    <message id="desk.look_at_fields">
        <source>Please look at the marked fields.</source>
        <extracomment>Front desk, above a form: something in it is wrong.</extracomment>
        <translation>Bitte prüfen Sie die markierten Felder.</translation>
    </message>
    <message id="desk.settings_damaged">
        <source>The settings of the front desk cannot be read. Give them again under &quot;This tablet&quot;.</source>
        <extracomment>Front desk: its own settings file cannot be read.</extracomment>
        <translation>Die Einstellungen des Empfangs sind nicht lesbar. Geben Sie sie unter „Dieses Tablet“ neu ein.</translation>
    </message>
    <message id="ready.title">
        <source>This tablet is ready</source>
        <extracomment>Page of a tablet on which no patient&apos;s visit is prepared.</extracomment>
        <translation>Dieses Tablet ist bereit</translation>
    </message>
    <message id="ready.body">
        <source>No visit is on it yet. The clinic makes one at the front desk.</source>
        <extracomment>The same page, below. The clinic prepares a visit first.</extracomment>
        <translation>Es ist noch keine Ausleihe darauf. Die Klinik legt am Empfang eine an.</translation>
    </message>
    <message id="entered.title">
        <source>The record is written</source>
        <extracomment>Staff have typed in a paper diary or changed a record; it is written.</extracomment>
        <translation>Der Datensatz ist gespeichert</translation>
    </message>
    <message id="entered.body">
        <source>Its name is %1. It is on this tablet. Take it out at the front desk.</source>
        <extracomment>Below it. %1 is the name of the record&apos;s folder.</extracomment>
        <translation>Sein Name ist %1. Er ist auf diesem Tablet. Exportieren Sie ihn am Empfang.</translation>
    </message>
    <message id="sitting.paper">
        <source>From paper: %1, night %2</source>
        <extracomment>Band above the questions while staff type in a paper diary. %1 study code, %2 number of the night.</extracomment>
        <translation>Vom Papier: %1, Nacht %2</translation>
    </message>
    <message id="sitting.amend">
        <source>Change of the record: %1, night %2</source>
        <extracomment>Band above the questions while staff change a record. %1 study code, %2 number of the night.</extracomment>
        <translation>Änderung am Datensatz: %1, Nacht %2</translation>
    </message>
    <message id="desk.section.form">
        <source>New visit</source>
        <extracomment>Front desk, menu: make a new visit.</extracomment>
        <translation>Neue Ausleihe</translation>
    </message>
    <message id="desk.section.visits">
        <source>Visits</source>
        <extracomment>Front desk, menu: list of visits.</extracomment>
        <translation>Ausleihen</translation>
    </message>
    <message id="desk.section.kits">
        <source>Kits</source>
        <extracomment>Front desk, menu: list of kits.</extracomment>
        <translation>Sets</translation>
    </message>
    <message id="desk.section.languages">
        <source>Languages</source>
        <extracomment>Front desk, menu: list of languages.</extracomment>
        <translation>Sprachen</translation>
    </message>
    <message id="desk.section.tablet">
        <source>This tablet</source>
        <extracomment>Front desk, menu: clinic, clock and PIN of this tablet.</extracomment>
        <translation>Dieses Tablet</translation>
    </message>
    <message id="desk.section.leave">
        <source>Lock and leave</source>
        <extracomment>Front desk, menu: lock it and give the tablet back to the patient&apos;s pages.</extracomment>
        <translation>Sperren und verlassen</translation>
    </message>
    <message id="desk.first_pin.title">
        <source>Choose a PIN for the front desk</source>
        <extracomment>Title: staff choose the first PIN.</extracomment>
        <translation>PIN für den Empfang wählen</translation>
    </message>
    <message id="desk.first_pin.body">
        <source>The front desk is for clinic staff. The PIN keeps patients out of it. Only the clinic should know it.</source>
        <extracomment>Below it.</extracomment>
        <translation>Der Empfang ist für das Personal der Klinik. Die PIN hält Patientinnen und Patienten davon fern. Nur die Klinik soll sie kennen.</translation>
    </message>
    <message id="desk.pin.title">
        <source>Front desk</source>
        <extracomment>Title: staff give the PIN.</extracomment>
        <translation>Empfang</translation>
    </message>
    <message id="desk.pin.field">
        <source>PIN</source>
        <extracomment>Label of the field for the PIN.</extracomment>
        <translation>PIN</translation>
    </message>
    <message id="desk.pin.again">
        <source>PIN once more</source>
        <extracomment>Label of the second field for a new PIN.</extracomment>
        <translation>PIN noch einmal</translation>
    </message>
    <message id="desk.pin.old">
        <source>PIN so far</source>
        <extracomment>Label of the field for the PIN so far.</extracomment>
        <translation>Bisherige PIN</translation>
    </message>
    <message id="desk.pin.new">
        <source>New PIN</source>
        <extracomment>Label of the field for a new PIN.</extracomment>
        <translation>Neue PIN</translation>
    </message>
    <message id="desk.pin.hint">
        <source>6 digits or more</source>
        <extracomment>Below the field.</extracomment>
        <translation>6 Ziffern oder mehr</translation>
    </message>
    <message id="desk.pin.set">
        <source>Use this PIN</source>
        <extracomment>Button.</extracomment>
        <translation>Diese PIN verwenden</translation>
    </message>
    <message id="desk.pin.open">
        <source>Open</source>
        <extracomment>Button: opens the front desk.</extracomment>
        <translation>Öffnen</translation>
    </message>
    <message id="desk.pin.change">
        <source>Change the PIN</source>
        <extracomment>Button and heading: the new PIN counts from now on.</extracomment>
        <translation>PIN ändern</translation>
    </message>
    <message id="desk.pin.changed">
        <source>The new PIN counts from now on.</source>
        <extracomment>Said after that.</extracomment>
        <translation>Ab jetzt gilt die neue PIN.</translation>
    </message>
    <message id="desk.pin.wrong">
        <source>That is not the PIN.</source>
        <extracomment>Said after a wrong PIN.</extracomment>
        <translation>Das ist nicht die PIN.</translation>
    </message>
    <message id="desk.pin.differs">
        <source>Not the same as above</source>
        <extracomment>Below the second field.</extracomment>
        <translation>Nicht dieselbe wie oben</translation>
    </message>
    <message id="desk.pin.not_now">
        <source>Too many wrong PINs. Wait a while, then try again.</source>
        <extracomment>Said when too many wrong PINs were given before.</extracomment>
        <translation>Zu viele falsche PINs. Warten Sie eine Weile und versuchen Sie es dann noch einmal.</translation>
    </message>
    <message id="desk.pin.wait">
        <source>Wrong PINs so far: %2. The next try is open in %1 seconds.</source>
        <extracomment>Too many wrong PINs. %1 seconds to wait, %2 how many were wrong.</extracomment>
        <translation>Falsche PINs bisher: %2. Der nächste Versuch ist in %1&#xa0;s möglich.</translation>
    </message>
    <message id="desk.pin.damaged">
        <source>The file with the PIN is damaged. Nobody can open the front desk with it.</source>
        <extracomment>The file with the PIN is damaged.</extracomment>
        <translation>Die Datei mit der PIN ist beschädigt. Niemand kann den Empfang damit öffnen.</translation>
    </message>
    <message id="desk.pin.forgotten">
        <source>PIN forgotten</source>
        <extracomment>Button: opens the page that says what happens then.</extracomment>
        <translation>PIN vergessen</translation>
    </message>
    <message id="desk.pin.limits">
        <source>The PIN locks this screen. It does not protect a stolen tablet: for that, the disk must be encrypted.</source>
        <extracomment>Caution: what the PIN does not do.</extracomment>
        <translation>Die PIN sperrt diesen Bildschirm. Sie schützt kein gestohlenes Tablet: Dafür muss der Datenträger verschlüsselt sein.</translation>
    </message>
    <message id="desk.forgotten.title">
        <source>The PIN is forgotten</source>
        <extracomment>Title: what happens when the PIN is given up.</extracomment>
        <translation>PIN vergessen</translation>
    </message>
    <message id="desk.forgotten.body">
        <source>A PIN cannot be read back. You can take the lock off. Then the front desk forgets the clinic, its settings, and every visit whose records are all safe elsewhere.</source>
        <extracomment>Below it.</extracomment>
        <translation>Eine PIN lässt sich nicht auslesen. Sie können die Sperre aufheben. Dann vergisst der Empfang die Klinik, seine Einstellungen und jede Ausleihe, deren Datensätze alle an einem anderen Ort sicher sind.</translation>
    </message>
    <message id="desk.forgotten.keeps">
        <source>A visit with something that is nowhere else stays: a night in it must not be lost.</source>
        <extracomment>Caution on the same page.</extracomment>
        <translation>Eine Ausleihe mit etwas, das nirgends sonst ist, bleibt: Eine Nacht darin darf nicht verloren gehen.</translation>
    </message>
    <message id="desk.forgotten.sure">
        <source>I am from the clinic, and I want this</source>
        <extracomment>Box to tick.</extracomment>
        <translation>Ich bin von der Klinik und möchte das</translation>
    </message>
    <message id="desk.forgotten.main">
        <source>Take the lock off</source>
        <extracomment>Button.</extracomment>
        <translation>Sperre aufheben</translation>
    </message>
    <message id="desk.forgotten.not_sure">
        <source>Tick the box first.</source>
        <extracomment>Said when the box is not ticked.</extracomment>
        <translation>Setzen Sie erst das Häkchen.</translation>
    </message>
    <message id="desk.forgotten.done">
        <source>The lock is off. Choose a new PIN.</source>
        <extracomment>Said after that.</extracomment>
        <translation>Die Sperre ist aufgehoben. Wählen Sie eine neue PIN.</translation>
    </message>
    <message id="desk.visits.title">
        <source>Visits on this tablet</source>
        <extracomment>Title of the list.</extracomment>
        <translation>Ausleihen auf diesem Tablet</translation>
    </message>
    <message id="desk.visits.none">
        <source>No visit is here.</source>
        <extracomment>In place of the list.</extracomment>
        <translation>Hier ist keine Ausleihe.</translation>
    </message>
    <message id="desk.col.code">
        <source>Study code</source>
        <extracomment>Head of a column.</extracomment>
        <translation>Code des Schlaftests</translation>
    </message>
    <message id="desk.col.label">
        <source>Kit</source>
        <extracomment>Head of a column: what is written on the bag of the kit.</extracomment>
        <translation>Set</translation>
    </message>
    <message id="desk.col.nights">
        <source>Nights</source>
        <extracomment>Head of a column: how many nights.</extracomment>
        <translation>Nächte</translation>
    </message>
    <message id="desk.col.night">
        <source>Night</source>
        <extracomment>Head of a column, and label of a field: which night.</extracomment>
        <translation>Nacht</translation>
    </message>
    <message id="desk.col.stand">
        <source>State</source>
        <extracomment>Head of a column: how far it is.</extracomment>
        <translation>Stand</translation>
    </message>
    <message id="desk.col.notes">
        <source>From the notes</source>
        <extracomment>Head of a column: what the patient&apos;s notes say of the night.</extracomment>
        <translation>Nach den Notizen</translation>
    </message>
    <message id="desk.col.evening">
        <source>Evening</source>
        <extracomment>Head of a column: date of the evening.</extracomment>
        <translation>Abend</translation>
    </message>
    <message id="desk.col.needed">
        <source>Needed signals, min: least / likely / most</source>
        <extracomment>Head of a column: minutes with all needed signals, three numbers.</extracomment>
        <translation>Nötige Signale, Min.: mindestens / wahrscheinlich / höchstens</translation>
    </message>
    <message id="desk.col.record">
        <source>Record</source>
        <extracomment>Head of a column.</extracomment>
        <translation>Datensatz</translation>
    </message>
    <message id="desk.col.when">
        <source>When</source>
        <extracomment>Head of a column: date and time.</extracomment>
        <translation>Wann</translation>
    </message>
    <message id="desk.col.sensor">
        <source>Sensor</source>
        <extracomment>Head of a column.</extracomment>
        <translation>Sensor</translation>
    </message>
    <message id="desk.col.at_least">
        <source>At least, min</source>
        <extracomment>Head of a column of minutes.</extracomment>
        <translation>Mindestens, Min.</translation>
    </message>
    <message id="desk.col.best_guess">
        <source>Likely, min</source>
        <extracomment>Head of a column of minutes.</extracomment>
        <translation>Wahrscheinlich, Min.</translation>
    </message>
    <message id="desk.col.at_most">
        <source>At most, min</source>
        <extracomment>Head of a column of minutes.</extracomment>
        <translation>Höchstens, Min.</translation>
    </message>
    <message id="desk.col.cause">
        <source>Reason</source>
        <extracomment>Head of a column: why time was lost.</extracomment>
        <translation>Grund</translation>
    </message>
    <message id="desk.col.off">
        <source>Lost, min</source>
        <extracomment>Head of a column of minutes: how long this lasted.</extracomment>
        <translation>Verloren, Min.</translation>
    </message>
    <message id="desk.col.alone">
        <source>Gain without it, min</source>
        <extracomment>Head of a column of minutes: what the night would gain without this one reason.</extracomment>
        <translation>Gewinn ohne diesen Grund, Min.</translation>
    </message>
    <message id="desk.col.kit">
        <source>Kit file</source>
        <extracomment>Head of a column.</extracomment>
        <translation>Set-Datei</translation>
    </message>
    <message id="desk.col.parts">
        <source>Parts</source>
        <extracomment>Head of a column: number of parts.</extracomment>
        <translation>Teile</translation>
    </message>
    <message id="desk.col.check">
        <source>Check</source>
        <extracomment>Head of a column: outcome of the check.</extracomment>
        <translation>Prüfung</translation>
    </message>
    <message id="desk.col.where">
        <source>Where</source>
        <extracomment>Head of a column.</extracomment>
        <translation>Ort</translation>
    </message>
    <message id="desk.col.step">
        <source>Step</source>
        <extracomment>Head of a column: step of putting the kit on.</extracomment>
        <translation>Schritt</translation>
    </message>
    <message id="desk.col.what">
        <source>What to do</source>
        <extracomment>Head of a column: what the patient is told.</extracomment>
        <translation>Was zu tun ist</translation>
    </message>
    <message id="desk.col.code_of_language">
        <source>Code</source>
        <extracomment>Head of a column: two letters.</extracomment>
        <translation>Kürzel</translation>
    </message>
    <message id="desk.col.review">
        <source>Review</source>
        <extracomment>Head of a column.</extracomment>
        <translation>Durchsicht</translation>
    </message>
    <message id="desk.stand.prepared">
        <source>prepared</source>
        <extracomment>State of a visit.</extracomment>
        <translation>vorbereitet</translation>
    </message>
    <message id="desk.stand.under_way">
        <source>night %1 is under way</source>
        <extracomment>State of a visit; %1 is the number of the night.</extracomment>
        <translation>Nacht %1 läuft</translation>
    </message>
    <message id="desk.stand.between">
        <source>night %1 has its record</source>
        <extracomment>State of a visit between two nights; %1 is the number of the night.</extracomment>
        <translation>Nacht %1 hat ihren Datensatz</translation>
    </message>
    <message id="desk.stand.recorded">
        <source>all nights have records</source>
        <extracomment>State of a visit.</extracomment>
        <translation>alle Nächte haben Datensätze</translation>
    </message>
    <message id="desk.stand.unread">
        <source>cannot be read</source>
        <extracomment>State of a visit that cannot be read.</extracomment>
        <translation>nicht lesbar</translation>
    </message>
    <message id="desk.stand.tonight">
        <source>on this tablet, %1</source>
        <extracomment>State of the visit that the tablet shows at the bedside; %1 is one of the states.</extracomment>
        <translation>auf diesem Tablet, %1</translation>
    </message>
    <message id="desk.verdict.enough">
        <source>enough</source>
        <extracomment>From the notes, the night is likely long enough.</extracomment>
        <translation>ausreichend</translation>
    </message>
    <message id="desk.verdict.short">
        <source>too short</source>
        <extracomment>From the notes, the night is likely too short.</extracomment>
        <translation>zu kurz</translation>
    </message>
    <message id="desk.verdict.borderline">
        <source>borderline</source>
        <extracomment>From the notes it cannot be told.</extracomment>
        <translation>grenzwertig</translation>
    </message>
    <message id="desk.verdict.unknown">
        <source>not known</source>
        <extracomment>The notes do not say.</extracomment>
        <translation>nicht bekannt</translation>
    </message>
    <message id="desk.verdict.contradictory">
        <source>answers do not fit</source>
        <extracomment>Answers contradict each other.</extracomment>
        <translation>Antworten passen nicht zusammen</translation>
    </message>
    <message id="desk.record.damaged">
        <source>does not verify</source>
        <extracomment>State of a record.</extracomment>
        <translation>Prüfung nicht bestanden</translation>
    </message>
    <message id="desk.record.taken_out">
        <source>verified, taken out</source>
        <extracomment>State of a record: a copy is on a stick.</extracomment>
        <translation>geprüft, exportiert</translation>
    </message>
    <message id="desk.record.only_here">
        <source>verified, only here</source>
        <extracomment>State of a record: no copy is anywhere else.</extracomment>
        <translation>geprüft, nur hier</translation>
    </message>
    <message id="desk.record.amended">
        <source>%1, change %2</source>
        <extracomment>Instead of a date alone: the record was changed; %1 the date, %2 how many times.</extracomment>
        <translation>%1, Änderung %2</translation>
    </message>
    <message id="desk.records.heading">
        <source>Records</source>
        <extracomment>Heading of a list.</extracomment>
        <translation>Datensätze</translation>
    </message>
    <message id="desk.records.none">
        <source>No record yet.</source>
        <extracomment>In place of the list.</extracomment>
        <translation>Noch kein Datensatz.</translation>
    </message>
    <message id="desk.contradictions.heading">
        <source>Answers that do not fit</source>
        <extracomment>Heading of a list.</extracomment>
        <translation>Antworten, die nicht zusammenpassen</translation>
    </message>
    <message id="desk.sensors.heading">
        <source>Minutes of each sensor, night %1, from the notes</source>
        <extracomment>Heading of a table; %1 number of the night.</extracomment>
        <translation>Minuten je Sensor, Nacht %1, nach den Notizen</translation>
    </message>
    <message id="desk.lost.heading">
        <source>Why time was lost</source>
        <extracomment>Heading of a table.</extracomment>
        <translation>Warum Zeit verloren ging</translation>
    </message>
    <message id="desk.lost.none">
        <source>Nothing was lost, as far as the notes say.</source>
        <extracomment>In place of the table.</extracomment>
        <translation>Nach den Notizen ging nichts verloren.</translation>
    </message>
    <message id="desk.lost.late_start">
        <source>The recording began after lights out</source>
        <extracomment>Reason for lost time.</extracomment>
        <translation>Die Aufzeichnung begann nach „Licht aus“</translation>
    </message>
    <message id="desk.lost.early_end">
        <source>The recording ended before lights on</source>
        <extracomment>Reason for lost time.</extracomment>
        <translation>Die Aufzeichnung endete vor „Licht an“</translation>
    </message>
    <message id="desk.visit.title">
        <source>%1, %2</source>
        <extracomment>Title of one visit; %1 study code, %2 what is on the kit&apos;s bag.</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message id="desk.visit.line">
        <source>State: %1. Nights: %2. Lights out at %3. %4. Due back %5.</source>
        <extracomment>Below it; %1 state, %2 nights, %3 bed time, %4 language, %5 date.</extracomment>
        <translation>Stand: %1. Nächte: %2. Licht aus um %3 Uhr. %4. Rückgabe bis %5.</translation>
    </message>
    <message id="desk.visit.tonight">
        <source>Put it on this tablet</source>
        <extracomment>Button: the tablet shows this visit at the bedside.</extracomment>
        <translation>Auf diesem Tablet verwenden</translation>
    </message>
    <message id="desk.visit.on_tablet">
        <source>%1 is on this tablet. Lock the front desk, and hand it over.</source>
        <extracomment>Said after that; %1 study code.</extracomment>
        <translation>%1 ist auf diesem Tablet. Sperren Sie den Empfang und geben Sie das Tablet mit.</translation>
    </message>
    <message id="desk.visit.give_up">
        <source>Give up the night</source>
        <extracomment>Button: the night that was begun will not be finished; what is known of it is written.</extracomment>
        <translation>Nacht abbrechen</translation>
    </message>
    <message id="desk.visit.given_up">
        <source>The night is marked as given up. What is known of it is in its record.</source>
        <extracomment>Said after that.</extracomment>
        <translation>Die Nacht ist als abgebrochen vermerkt. Was von ihr bekannt ist, steht in ihrem Datensatz.</translation>
    </message>
    <message id="desk.form.title">
        <source>New visit</source>
        <extracomment>Title of a form.</extracomment>
        <translation>Neue Ausleihe</translation>
    </message>
    <message id="desk.form.main">
        <source>Make the visit</source>
        <extracomment>Button.</extracomment>
        <translation>Ausleihe anlegen</translation>
    </message>
    <message id="desk.form.made">
        <source>%1 is made.</source>
        <extracomment>Said after that; %1 study code.</extracomment>
        <translation>%1 ist angelegt.</translation>
    </message>
    <message id="desk.form.made_tonight">
        <source>%1 is made, and is on this tablet.</source>
        <extracomment>The same; the tablet shows it at the bedside now.</extracomment>
        <translation>%1 ist angelegt und auf diesem Tablet.</translation>
    </message>
    <message id="desk.field.code">
        <source>Study code</source>
        <extracomment>Label of a field. No name of a patient.</extracomment>
        <translation>Code des Schlaftests</translation>
    </message>
    <message id="desk.field.code_hint">
        <source>No name, no date of birth</source>
        <extracomment>Below it.</extracomment>
        <translation>Kein Name, kein Geburtsdatum</translation>
    </message>
    <message id="desk.field.kit">
        <source>Kit</source>
        <extracomment>Label of a choice.</extracomment>
        <translation>Set</translation>
    </message>
    <message id="desk.field.kit_label">
        <source>Label on the bag</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Etikett der Tasche</translation>
    </message>
    <message id="desk.field.kit_label_hint">
        <source>Such as Bag 12</source>
        <extracomment>Below it.</extracomment>
        <translation>Zum Beispiel Tasche 12</translation>
    </message>
    <message id="desk.field.nights">
        <source>Nights</source>
        <extracomment>Label of a field: number.</extracomment>
        <translation>Nächte</translation>
    </message>
    <message id="desk.field.language">
        <source>Language</source>
        <extracomment>Label of a choice.</extracomment>
        <translation>Sprache</translation>
    </message>
    <message id="desk.field.writing_hand">
        <source>Writes with</source>
        <extracomment>Label of a choice.</extracomment>
        <translation>Schreibt mit</translation>
    </message>
    <message id="desk.hand.right">
        <source>the right hand</source>
        <extracomment>One of two.</extracomment>
        <translation>der rechten Hand</translation>
    </message>
    <message id="desk.hand.left">
        <source>the left hand</source>
        <extracomment>One of two.</extracomment>
        <translation>der linken Hand</translation>
    </message>
    <message id="desk.field.bed_time">
        <source>Lights out at</source>
        <extracomment>Label of a field: planned time of lights out.</extracomment>
        <translation>Licht aus um</translation>
    </message>
    <message id="desk.field.bed_time_hint">
        <source>24 hours, such as 22:05</source>
        <extracomment>Below it.</extracomment>
        <translation>24 Stunden, zum Beispiel 22:05</translation>
    </message>
    <message id="desk.field.return_by">
        <source>Due back</source>
        <extracomment>Label of a field: date.</extracomment>
        <translation>Rückgabe bis</translation>
    </message>
    <message id="desk.date_hint">
        <source>Such as 2026-11-04</source>
        <extracomment>Below a date.</extracomment>
        <translation>Zum Beispiel 2026-11-04</translation>
    </message>
    <message id="desk.field.clock">
        <source>The tablet says %1, %2, %3. That is right</source>
        <extracomment>Box to tick; %1 time, %2 date, %3 time zone.</extracomment>
        <translation>Das Tablet zeigt %1 Uhr, %2, %3. Das stimmt</translation>
    </message>
    <message id="desk.option.signal_check">
        <source>With a check of the signals</source>
        <extracomment>Box to tick: optional part of the evening.</extracomment>
        <translation>Mit Prüfung der Signale</translation>
    </message>
    <message id="desk.option.evening_questions">
        <source>With questions in the evening</source>
        <extracomment>Box to tick: optional part of the evening.</extracomment>
        <translation>Mit Fragen am Abend</translation>
    </message>
    <message id="desk.option.mirror">
        <source>With the mirror (camera)</source>
        <extracomment>Box to tick: optional part.</extracomment>
        <translation>Mit Spiegel (Kamera)</translation>
    </message>
    <message id="desk.option.narration">
        <source>With the voice</source>
        <extracomment>Box to tick: optional part.</extracomment>
        <translation>Mit Stimme</translation>
    </message>
    <message id="desk.out.title">
        <source>Take records out</source>
        <extracomment>Title and button: copy the records to a stick.</extracomment>
        <translation>Datensätze exportieren</translation>
    </message>
    <message id="desk.out.body">
        <source>Each record is copied, read back and checked on the stick.</source>
        <extracomment>Below the title.</extracomment>
        <translation>Jeder Datensatz wird auf den USB-Stick kopiert, dort wieder gelesen und geprüft.</translation>
    </message>
    <message id="desk.out.no_stick">
        <source>No stick is plugged in, or none that can be written.</source>
        <extracomment>No stick is plugged in.</extracomment>
        <translation>Es ist kein USB-Stick eingesteckt oder keiner, auf den geschrieben werden kann.</translation>
    </message>
    <message id="desk.out.again">
        <source>Look again</source>
        <extracomment>Button.</extracomment>
        <translation>Noch einmal suchen</translation>
    </message>
    <message id="desk.out.stick">
        <source>Stick</source>
        <extracomment>Label of a choice.</extracomment>
        <translation>USB-Stick</translation>
    </message>
    <message id="desk.out.main">
        <source>Copy all to the stick</source>
        <extracomment>Button.</extracomment>
        <translation>Alles auf den USB-Stick kopieren</translation>
    </message>
    <message id="desk.out.choose">
        <source>Choose a stick first.</source>
        <extracomment>Said when none is chosen.</extracomment>
        <translation>Wählen Sie erst einen USB-Stick.</translation>
    </message>
    <message id="desk.out.safe">
        <source>All records are on the stick, and checked there. You can take the stick out now.</source>
        <extracomment>Said after that: it was unmounted.</extracomment>
        <translation>Alle Datensätze sind auf dem USB-Stick und dort geprüft. Sie können ihn jetzt abziehen.</translation>
    </message>
    <message id="desk.out.synced">
        <source>All records are on the stick, and checked there. The system still has hold of it: eject it before you pull it out.</source>
        <extracomment>Said after that: it could not be unmounted.</extracomment>
        <translation>Alle Datensätze sind auf dem USB-Stick und dort geprüft. Das System hält ihn noch fest: Werfen Sie ihn aus, bevor Sie ihn abziehen.</translation>
    </message>
    <message id="desk.wipe.title">
        <source>Ready for the next patient</source>
        <extracomment>Title and button: removes the visit from the tablet.</extracomment>
        <translation>Für die nächste Ausleihe freimachen</translation>
    </message>
    <message id="desk.wipe.body">
        <source>This removes %1 from the tablet: the visit, its journal and its records.</source>
        <extracomment>Below the title; %1 study code.</extracomment>
        <translation>Das entfernt %1 vom Tablet: die Ausleihe, ihre Notizen und ihre Datensätze.</translation>
    </message>
    <message id="desk.wipe.safe">
        <source>Every night has its record, and every record was taken out and checked.</source>
        <extracomment>Everything is safe elsewhere.</extracomment>
        <translation>Jede Nacht hat ihren Datensatz, und jeder Datensatz ist exportiert und geprüft.</translation>
    </message>
    <message id="desk.wipe.reason">
        <source>Reason why it may go</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Grund, warum sie gelöscht werden darf</translation>
    </message>
    <message id="desk.wipe.reason_hint">
        <source>It is kept. Do not name the study code.</source>
        <extracomment>Below it.</extracomment>
        <translation>Der Grund wird aufbewahrt. Nennen Sie nicht den Code des Schlaftests.</translation>
    </message>
    <message id="desk.wipe.main">
        <source>Remove it for good</source>
        <extracomment>Button.</extracomment>
        <translation>Endgültig entfernen</translation>
    </message>
    <message id="desk.wipe.done">
        <source>The visit is gone from this tablet.</source>
        <extracomment>Said after that.</extracomment>
        <translation>Die Ausleihe ist nicht mehr auf diesem Tablet.</translation>
    </message>
    <message id="desk.wipe.against.no_record">
        <source>A night was begun and has no record.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation>Eine Nacht wurde begonnen und hat keinen Datensatz.</translation>
    </message>
    <message id="desk.wipe.against.bad_record">
        <source>A record does not verify.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation>Ein Datensatz hat die Prüfung nicht bestanden.</translation>
    </message>
    <message id="desk.wipe.against.not_taken_out">
        <source>A record is only on this tablet. Take it out first.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation>Ein Datensatz ist nur auf diesem Tablet. Exportieren Sie ihn erst.</translation>
    </message>
    <message id="desk.wipe.against.journal_unread">
        <source>The journal could not be read. A night may be in it.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation>Die Notizen waren nicht lesbar. Es kann eine Nacht darin sein.</translation>
    </message>
    <message id="desk.wipe.against.nothing_done">
        <source>Nothing was done with this visit yet.</source>
        <extracomment>Caution: why it should not go.</extracomment>
        <translation>Mit dieser Ausleihe ist noch nichts geschehen.</translation>
    </message>
    <message id="desk.amend.title">
        <source>Change a record</source>
        <extracomment>Title and button: change what a record says.</extracomment>
        <translation>Datensatz ändern</translation>
    </message>
    <message id="desk.amend.body">
        <source>The record stays as it is. A new one is written beside it. It says who changed what, and why.</source>
        <extracomment>Below the title.</extracomment>
        <translation>Der Datensatz bleibt, wie er ist. Daneben wird ein neuer gespeichert. Darin steht, wer was geändert hat und warum.</translation>
    </message>
    <message id="desk.amend.main">
        <source>Open the answers</source>
        <extracomment>Button: opens the answers.</extracomment>
        <translation>Antworten öffnen</translation>
    </message>
    <message id="desk.who">
        <source>Who you are</source>
        <extracomment>Label of a field: who types.</extracomment>
        <translation>Wer Sie sind</translation>
    </message>
    <message id="desk.who_hint">
        <source>Initials or your role</source>
        <extracomment>Below it.</extracomment>
        <translation>Initialen oder Ihre Funktion</translation>
    </message>
    <message id="desk.why">
        <source>Reason</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Grund</translation>
    </message>
    <message id="desk.why_hint">
        <source>Such as: the patient called and said so</source>
        <extracomment>Below it.</extracomment>
        <translation>Zum Beispiel: am Telefon so mitgeteilt</translation>
    </message>
    <message id="desk.paper.title">
        <source>Type in a paper diary</source>
        <extracomment>Title and button: staff type in what the patient wrote on paper.</extracomment>
        <translation>Papier-Tagebuch eingeben</translation>
    </message>
    <message id="desk.paper.body">
        <source>The same questions as on the tablet. The record says that it came from paper.</source>
        <extracomment>Below the title.</extracomment>
        <translation>Dieselben Fragen wie auf dem Tablet. Im Datensatz steht, dass er vom Papier kommt.</translation>
    </message>
    <message id="desk.paper.evening">
        <source>Evening of</source>
        <extracomment>Label of a field: date of the evening on which the night began.</extracomment>
        <translation>Datum vom Abend</translation>
    </message>
    <message id="desk.paper.main">
        <source>Open the questions</source>
        <extracomment>Button: opens the questions.</extracomment>
        <translation>Fragen öffnen</translation>
    </message>
    <message id="desk.sitting.nothing">
        <source>No record was written.</source>
        <extracomment>Said after staff came back without writing anything.</extracomment>
        <translation>Es wurde kein Datensatz gespeichert.</translation>
    </message>
    <message id="desk.sitting.written">
        <source>Written: %1</source>
        <extracomment>Said after a record was written; %1 its name.</extracomment>
        <translation>Gespeichert: %1</translation>
    </message>
    <message id="desk.print.title">
        <source>Print the sheet</source>
        <extracomment>Title and button: the take-home sheet.</extracomment>
        <translation>Blatt drucken</translation>
    </message>
    <message id="desk.kits.title">
        <source>Kits</source>
        <extracomment>Title.</extracomment>
        <translation>Sets</translation>
    </message>
    <message id="desk.kits.body">
        <source>Each kit file is checked as it is listed. Open one to see its walk-through.</source>
        <extracomment>Below the title.</extracomment>
        <translation>Jede Set-Datei wird beim Auflisten geprüft. Öffnen Sie eine, um ihre Schritte zu sehen.</translation>
    </message>
    <message id="desk.kits.fine">
        <source>fine</source>
        <extracomment>Outcome of the check of a kit file.</extracomment>
        <translation>in Ordnung</translation>
    </message>
    <message id="desk.kits.faults">
        <source>faults: %1</source>
        <extracomment>Outcome of the check of a kit file; %1 how many.</extracomment>
        <translation>Fehler: %1</translation>
    </message>
    <message id="desk.kits.on_stick">
        <source>on a stick</source>
        <extracomment>Where a kit file is.</extracomment>
        <translation>auf einem USB-Stick</translation>
    </message>
    <message id="desk.kits.on_tablet">
        <source>on this tablet</source>
        <extracomment>Where a kit file is.</extracomment>
        <translation>auf diesem Tablet</translation>
    </message>
    <message id="desk.kit.title">
        <source>Kit %1</source>
        <extracomment>Title of one kit; %1 its name.</extracomment>
        <translation>Set %1</translation>
    </message>
    <message id="desk.kit.line">
        <source>Steps: %1. Minutes: %2. Strips of tape: %3.</source>
        <extracomment>Below it; %1 steps, %2 minutes, %3 strips of tape.</extracomment>
        <translation>Schritte: %1. Minuten: %2. Pflasterstreifen: %3.</translation>
    </message>
    <message id="desk.kit.take">
        <source>Take it over into this tablet</source>
        <extracomment>Button: copies the kit file from the stick.</extracomment>
        <translation>Auf dieses Tablet übernehmen</translation>
    </message>
    <message id="desk.kit.taken">
        <source>The kit is on this tablet now.</source>
        <extracomment>Said after that.</extracomment>
        <translation>Das Set ist jetzt auf diesem Tablet.</translation>
    </message>
    <message id="desk.languages.title">
        <source>Languages</source>
        <extracomment>Title.</extracomment>
        <translation>Sprachen</translation>
    </message>
    <message id="desk.languages.body">
        <source>A language that no clinical translator has reviewed is for patients only with somebody at hand who speaks it.</source>
        <extracomment>Below the title.</extracomment>
        <translation>Eine Sprache ohne fachliche Durchsicht (klinische Übersetzung) ist für Patientinnen und Patienten nur erlaubt, wenn jemand in der Nähe ist, der sie spricht.</translation>
    </message>
    <message id="desk.languages.source">
        <source>source</source>
        <extracomment>State of a language.</extracomment>
        <translation>Ausgangssprache</translation>
    </message>
    <message id="desk.languages.unreviewed">
        <source>needs review by a clinical translator</source>
        <extracomment>State of a language.</extracomment>
        <translation>fachliche Durchsicht nötig (klinische Übersetzung)</translation>
    </message>
    <message id="desk.languages.desk">
        <source>Language of the front desk</source>
        <extracomment>Label of a choice.</extracomment>
        <translation>Sprache des Empfangs</translation>
    </message>
    <message id="desk.languages.use">
        <source>Use it</source>
        <extracomment>Button.</extracomment>
        <translation>Verwenden</translation>
    </message>
    <message id="desk.tablet.title">
        <source>This tablet</source>
        <extracomment>Title.</extracomment>
        <translation>Dieses Tablet</translation>
    </message>
    <message id="desk.tablet.zone">
        <source>Time zone</source>
        <extracomment>Label of a field: IANA time zone.</extracomment>
        <translation>Zeitzone</translation>
    </message>
    <message id="desk.tablet.now">
        <source>There it is %1, %2</source>
        <extracomment>Below it; %1 time, %2 date.</extracomment>
        <translation>Dort ist es %1 Uhr, %2</translation>
    </message>
    <message id="desk.tablet.save">
        <source>Save</source>
        <extracomment>Button.</extracomment>
        <translation>Speichern</translation>
    </message>
    <message id="desk.tablet.saved">
        <source>Saved. New visits begin with this.</source>
        <extracomment>Said after that.</extracomment>
        <translation>Gespeichert. Neue Ausleihen beginnen damit.</translation>
    </message>
    <message id="desk.clinic.heading">
        <source>The clinic</source>
        <extracomment>Heading of a form.</extracomment>
        <translation>Die Klinik</translation>
    </message>
    <message id="desk.clinic.name">
        <source>Name of the clinic</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Name der Klinik</translation>
    </message>
    <message id="desk.clinic.phone">
        <source>Phone</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Telefon</translation>
    </message>
    <message id="desk.clinic.hours">
        <source>Hours</source>
        <extracomment>Label of a field: when the phone is answered.</extracomment>
        <translation>Öffnungszeiten</translation>
    </message>
    <message id="desk.clinic.hours_hint">
        <source>Such as mon-fri 08:00-17:00, sat 09:00-12:00</source>
        <extracomment>Below it. Days are written in English in three letters.</extracomment>
        <translation>Zum Beispiel mon-fri 08:00-17:00, sat 09:00-12:00 (Tage auf Englisch)</translation>
    </message>
    <message id="desk.clinic.phone_outside_hours">
        <source>Phone outside hours</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Telefon außerhalb der Öffnungszeiten</translation>
    </message>
    <message id="desk.clinic.emergency">
        <source>Emergency number</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Notrufnummer</translation>
    </message>
    <message id="desk.problem.disk_full">
        <source>There is no room left. Nothing was lost; make room and try again.</source>
        <extracomment>Something could not be written.</extracomment>
        <translation>Es ist kein Platz mehr. Nichts ist verloren. Schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
    </message>
    <message id="desk.problem.read_only">
        <source>It cannot be written there: it is write-protected.</source>
        <extracomment>Something could not be written.</extracomment>
        <translation>Dort kann nicht geschrieben werden: Es ist schreibgeschützt.</translation>
    </message>
    <message id="desk.problem.no_place">
        <source>The folder or the stick is not there.</source>
        <extracomment>Something could not be written.</extracomment>
        <translation>Der Ordner oder der USB-Stick ist nicht da.</translation>
    </message>
    <message id="desk.problem.second_copy">
        <source>Another copy of the program has this open. Close that one first.</source>
        <extracomment>A journal is open in another copy of the program.</extracomment>
        <translation>Das Programm läuft noch einmal und hat das geöffnet. Schließen Sie erst das andere.</translation>
    </message>
    <message id="desk.problem.bad_code">
        <source>Letters, digits, - and _, at most 32, such as SM-0417</source>
        <extracomment>Below the study code.</extracomment>
        <translation>Buchstaben von A bis Z, Ziffern, - und _, höchstens 32, zum Beispiel SM-0417</translation>
    </message>
    <message id="desk.problem.visit_exists">
        <source>There is a visit of this code. Take another one.</source>
        <extracomment>Below the study code.</extracomment>
        <translation>Es gibt schon eine Ausleihe mit diesem Code. Nehmen Sie einen anderen.</translation>
    </message>
    <message id="desk.problem.missing">
        <source>This is needed</source>
        <extracomment>Below an empty field.</extracomment>
        <translation>Diese Angabe ist nötig</translation>
    </message>
    <message id="desk.problem.bad_phone">
        <source>This cannot be dialled. Right would be such as 555-0142</source>
        <extracomment>Below a phone number.</extracomment>
        <translation>Das lässt sich nicht wählen. Richtig wäre zum Beispiel 555-0142</translation>
    </message>
    <message id="desk.problem.bad_date">
        <source>No date. Right would be such as 2026-11-04</source>
        <extracomment>Below a date.</extracomment>
        <translation>Kein Datum. Richtig wäre zum Beispiel 2026-11-04</translation>
    </message>
    <message id="desk.problem.bad_time_of_day">
        <source>No time. Right would be such as 22:05</source>
        <extracomment>Below a time.</extracomment>
        <translation>Keine Uhrzeit. Richtig wäre zum Beispiel 22:05</translation>
    </message>
    <message id="desk.problem.bad_nights">
        <source>Right would be a number from 1 up to the nights of the visit, at most 14</source>
        <extracomment>Below a number of nights, or of one night.</extracomment>
        <translation>Richtig wäre eine Zahl von 1 bis zur Zahl der Nächte der Ausleihe, höchstens 14</translation>
    </message>
    <message id="desk.problem.bad_hours">
        <source>Right would be such as mon-fri 08:00-17:00, sat 09:00-12:00</source>
        <extracomment>Below the hours of the clinic.</extracomment>
        <translation>Richtig wäre zum Beispiel mon-fri 08:00-17:00, sat 09:00-12:00</translation>
    </message>
    <message id="desk.problem.unknown_zone">
        <source>No such zone. Right would be such as America/New_York</source>
        <extracomment>Below the time zone.</extracomment>
        <translation>Diese Zeitzone gibt es nicht. Richtig wäre zum Beispiel America/New_York</translation>
    </message>
    <message id="desk.problem.no_phone">
        <source>The clinic&apos;s phone number is missing. Give it under &quot;This tablet&quot; first.</source>
        <extracomment>Above the form of a new visit: a sheet without a number does not leave the desk.</extracomment>
        <translation>Die Telefonnummer der Klinik fehlt. Geben Sie sie erst unter „Dieses Tablet“ ein.</translation>
    </message>
    <message id="desk.problem.clock_not_confirmed">
        <source>Look at the clock and confirm it</source>
        <extracomment>Beside the clock in the form of a new visit.</extracomment>
        <translation>Sehen Sie auf die Uhr und bestätigen Sie sie</translation>
    </message>
    <message id="desk.problem.reason_missing">
        <source>A reason is needed</source>
        <extracomment>Below the reason.</extracomment>
        <translation>Ein Grund ist nötig</translation>
    </message>
    <message id="desk.problem.reason_names_code">
        <source>Leave the study code out: the reason is kept</source>
        <extracomment>Below the reason.</extracomment>
        <translation>Lassen Sie den Code des Schlaftests weg: Der Grund wird aufbewahrt</translation>
    </message>
    <message id="desk.problem.record_exists">
        <source>Another record of that name is there already. It was not touched.</source>
        <extracomment>A stick has another record of the same name.</extracomment>
        <translation>Dort ist schon ein anderer Datensatz mit diesem Namen. Er wurde nicht angerührt.</translation>
    </message>
    <message id="desk.problem.pin_form">
        <source>Right would be 6 to 64 digits</source>
        <extracomment>Below a new PIN.</extracomment>
        <translation>Richtig wären 6 bis 64 Ziffern</translation>
    </message>
    <message id="desk.problem.pin_set">
        <source>There is a PIN already</source>
        <extracomment>There is a PIN already.</extracomment>
        <translation>Es gibt schon eine PIN</translation>
    </message>
    <message id="desk.problem.no_print_service">
        <source>No print service answers on this tablet. Save the sheet as a PDF instead.</source>
        <extracomment>Printing.</extracomment>
        <translation>Auf diesem Tablet antwortet kein Druckdienst. Speichern Sie das Blatt stattdessen als PDF.</translation>
    </message>
    <message id="desk.problem.no_printer">
        <source>No printer is set up. Save the sheet as a PDF instead.</source>
        <extracomment>Printing.</extracomment>
        <translation>Es ist kein Drucker eingerichtet. Speichern Sie das Blatt stattdessen als PDF.</translation>
    </message>
    <message id="desk.problem.printer_stopped">
        <source>The printer is stopped. Nothing was sent to it.</source>
        <extracomment>Printing.</extracomment>
        <translation>Der Drucker ist angehalten. Es wurde nichts an ihn gesendet.</translation>
    </message>
    <message id="desk.problem.not_accepted">
        <source>The printer takes no jobs. Nothing was printed.</source>
        <extracomment>Printing.</extracomment>
        <translation>Der Drucker nimmt keine Aufträge an. Es wurde nichts gedruckt.</translation>
    </message>
    <message id="desk.print.body">
        <source>What will be printed, page by page: %1 pages.</source>
        <extracomment>Below the title; %1 how many pages.</extracomment>
        <translation>Was gedruckt wird, Seite für Seite. Seiten: %1.</translation>
    </message>
    <message id="desk.print.paper">
        <source>Paper</source>
        <extracomment>Label of a choice.</extracomment>
        <translation>Papier</translation>
    </message>
    <message id="desk.print.size">
        <source>Letters</source>
        <extracomment>Label of a choice: size of the letters.</extracomment>
        <translation>Schriftgröße</translation>
    </message>
    <message id="desk.print.normal">
        <source>normal</source>
        <extracomment>One of two.</extracomment>
        <translation>normal</translation>
    </message>
    <message id="desk.print.large">
        <source>large</source>
        <extracomment>One of two.</extracomment>
        <translation>groß</translation>
    </message>
    <message id="desk.print.printer">
        <source>Printer</source>
        <extracomment>Label of a choice.</extracomment>
        <translation>Drucker</translation>
    </message>
    <message id="desk.print.page">
        <source>Page</source>
        <extracomment>Label of a choice: which page of the preview.</extracomment>
        <translation>Seite</translation>
    </message>
    <message id="desk.print.main">
        <source>Print</source>
        <extracomment>Button.</extracomment>
        <translation>Drucken</translation>
    </message>
    <message id="desk.print.save">
        <source>Save as PDF</source>
        <extracomment>Button: the sheet as a PDF on the stick, or in the folder for documents.</extracomment>
        <translation>Als PDF speichern</translation>
    </message>
    <message id="desk.print.sent">
        <source>Handed to %1.</source>
        <extracomment>Said after that; %1 name of the printer.</extracomment>
        <translation>An %1 gesendet.</translation>
    </message>
    <message id="desk.print.saved">
        <source>Saved: %1</source>
        <extracomment>Said after that; %1 name of the file.</extracomment>
        <translation>Gespeichert: %1</translation>
    </message>
    <message id="desk.print.picture">
        <source>Page %1 of the sheet</source>
        <extracomment>For screen readers: a picture of one page of the sheet; %1 which.</extracomment>
        <translation>Seite %1 vom Blatt</translation>
    </message>
    <message id="desk.visit.skin_sore">
        <source>Half an hour after the tape came off, the patient said that the skin was still sore.</source>
        <extracomment>Caution on the page of one visit: the patient said so half an hour after the tape came off, when the record was written already.</extracomment>
        <translation>Eine halbe Stunde nach dem Abnehmen der Pflaster war die Haut noch gereizt.</translation>
    </message>
    <message id="q.hint.unnamed_off">
        <source>At %1 you noted that something came off. Which part was it?</source>
        <extracomment>Under the question what came off. %1 is a time.</extracomment>
        <translation>Um %1 haben Sie notiert, dass sich etwas gelöst hat. Welcher Teil war es?</translation>
    </message>
    <message id="desk.leave">
        <source>Leave</source>
        <extracomment>Button on the page that asks for the PIN: back to the patient&apos;s pages.</extracomment>
        <translation>Verlassen</translation>
    </message>
    <message id="breath.sound_on">
        <source>With sound</source>
        <extracomment>Small button beside the breathing guide of a belt, short: a soft tone then says at the end of each breath out that the belt may be closed now.</extracomment>
        <translation>Mit Ton</translation>
    </message>
    <message id="breath.sound_off">
        <source>Silent</source>
        <extracomment>The same button while the tone sounds, short: makes it silent.</extracomment>
        <translation>Ohne Ton</translation>
    </message>
    <message id="bed.night_sound">
        <source>Soft sound when I note something</source>
        <extracomment>Last page of the evening, a choice to tick, off at first: a soft tone answers each note of the night. Without it the night is silent.</extracomment>
        <translation>Leiser Ton, wenn ich etwas notiere</translation>
    </message>
    <message id="practice.bar">
        <source>Practice: nothing is kept</source>
        <extracomment>Stands on top of each page of the practice run.</extracomment>
        <translation>Übung: Nichts wird gespeichert</translation>
    </message>
    <message id="practice.end">
        <source>End practice</source>
        <extracomment>Small button on top of each page of the practice run: leaves it for the first page.</extracomment>
        <translation>Übung beenden</translation>
    </message>
    <message id="welcome.read_to_me">
        <source>Read each page to me</source>
        <extracomment>First page, a choice to tick: the tablet reads each page aloud when it comes up.</extracomment>
        <translation>Jede Seite vorlesen</translation>
    </message>
    <message id="step.stop_reading">
        <source>Stop reading</source>
        <extracomment>Small button in place of &quot;Say it again&quot; while the page is read aloud. Nothing is read by itself after it.</extracomment>
        <translation>Nicht weiterlesen</translation>
    </message>
    <message id="step.mirror">
        <source>Mirror</source>
        <extracomment>Small button on a step: shows the person by the camera as in a mirror, beside the drawing. Nothing of it is kept.</extracomment>
        <translation>Spiegel</translation>
    </message>
    <message id="sound.off_for_visit">
        <source>Reading aloud is switched off for this visit. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;: reading aloud is an option of the visit, and it is off.</extracomment>
        <translation>Das Vorlesen ist hier abgeschaltet. Alle Worte stehen auf der Seite.</translation>
    </message>
    <message id="sound.no_device">
        <source>The tablet finds no speaker. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;.</extracomment>
        <translation>Das Tablet findet keinen Lautsprecher. Alle Worte stehen auf der Seite.</translation>
    </message>
    <message id="sound.no_recording">
        <source>There is no recording of this page. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;.</extracomment>
        <translation>Für diese Seite gibt es keine Aufnahme. Alle Worte stehen auf der Seite.</translation>
    </message>
    <message id="sound.failed">
        <source>The recording of this page cannot be played. All the words are on the page.</source>
        <extracomment>Answer to &quot;Why no sound?&quot;: a recording was there, and could not be played.</extracomment>
        <translation>Die Aufnahme dieser Seite lässt sich nicht abspielen. Alle Worte stehen auf der Seite.</translation>
    </message>
    <message id="practice.offer">
        <source>Practice first</source>
        <extracomment>Button on the first page, smaller than the one that begins the evening: all steps for practice, by day.</extracomment>
        <translation>Erst üben</translation>
    </message>
    <message id="practice.begin.title">
        <source>A practice run</source>
        <extracomment>Title of the page that begins the practice run.</extracomment>
        <translation>Zur Übung</translation>
    </message>
    <message id="practice.begin.body">
        <source>You see the same steps as tonight. Take your time. Nothing is noted, and you can stop at any step.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Sie sehen die gleichen Schritte wie heute Abend. Lassen Sie sich Zeit. Nichts wird notiert, und Sie können bei jedem Schritt aufhören.</translation>
    </message>
    <message id="practice.begin.caution">
        <source>Keep the tape for tonight. Leave the recorder off, and plug in nothing that starts it.</source>
        <extracomment>Caution on the page that begins the practice run.</extracomment>
        <translation>Heben Sie die Pflaster für heute Abend auf. Lassen Sie den Rekorder aus, und stecken Sie nichts ein, was ihn startet.</translation>
    </message>
    <message id="practice.no_tape">
        <source>Practice: do not use the tape now. You need it tonight.</source>
        <extracomment>Caution in the practice run, on a step that uses tape.</extracomment>
        <translation>Übung: Nehmen Sie jetzt kein Pflaster. Sie brauchen es heute Abend.</translation>
    </message>
    <message id="practice.no_start">
        <source>Practice: only look. Do not do this step now, for it starts the recorder.</source>
        <extracomment>Caution in the practice run, on the step that sets the recorder going.</extracomment>
        <translation>Übung: Sehen Sie nur hin. Machen Sie diesen Schritt jetzt nicht, denn er startet den Rekorder.</translation>
    </message>
    <message id="practice.light">
        <source>Practice: the recorder is off, so there is no light. Tonight you tap what you see.</source>
        <extracomment>In the practice run, on the page about the recorder&apos;s light.</extracomment>
        <translation>Übung: Der Rekorder ist aus, darum leuchtet nichts. Heute Abend tippen Sie an, was Sie sehen.</translation>
    </message>
    <message id="practice.over.title">
        <source>Practice is over</source>
        <extracomment>Title of the last page of the practice run.</extracomment>
        <translation>Die Übung ist vorbei</translation>
    </message>
    <message id="practice.over.body">
        <source>Take the parts off and put them back into the bag. Tonight you begin again from the first page.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Nehmen Sie die Teile ab, und legen Sie sie zurück in die Tasche. Heute Abend beginnen Sie wieder auf der ersten Seite.</translation>
    </message>
    <message id="practice.over.caution">
        <source>Does the recorder show a light now? Call your clinic before tonight: %1.</source>
        <extracomment>Caution on the last page of the practice run. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Leuchtet am Rekorder jetzt ein Lämpchen? Rufen Sie die Klinik vor heute Abend an: %1.</translation>
    </message>
    <message id="practice.over.main">
        <source>Back to the first page</source>
        <extracomment>Button on the last page of the practice run.</extracomment>
        <translation>Zurück zur ersten Seite</translation>
    </message>
    <message id="welcome.start_at">
        <source>Time to start: about %1</source>
        <extracomment>First page, small, while the time to start still lies ahead. %1 is a time such as 9:25 PM.</extracomment>
        <translation>Zeit zum Anfangen: etwa %1</translation>
    </message>
    <message id="mirror.keeps_nothing">
        <source>You see yourself as in a mirror. No picture is kept, and none is sent.</source>
        <extracomment>In the mirror page, under the camera&apos;s picture. It is a promise: nothing may be added.</extracomment>
        <translation>Sie sehen sich wie in einem Spiegel. Kein Bild wird behalten, und keines wird verschickt.</translation>
    </message>
    <message id="mirror.no_camera">
        <source>The tablet finds no camera. Look at the drawing, or use a mirror.</source>
        <extracomment>In the mirror page, where the camera&apos;s picture would be.</extracomment>
        <translation>Das Tablet findet keine Kamera. Sehen Sie die Zeichnung an, oder nehmen Sie einen Spiegel.</translation>
    </message>
    <message id="bed.line.plug_in">
        <source>The tablet is not charging. Plug in its charger now, so that it lasts the night.</source>
        <extracomment>In place of that line while the tablet has no charger.</extracomment>
        <translation>Das Tablet lädt nicht. Stecken Sie jetzt sein Ladegerät ein, damit es die Nacht durchhält.</translation>
    </message>
    <message id="night.read">
        <source>Read this to me</source>
        <extracomment>Night page, large button under advice: reads it aloud. Nothing is read at night without it.</extracomment>
        <translation>Vorlesen</translation>
    </message>
    <message id="finished.next.title">
        <source>Night %1 is saved</source>
        <extracomment>Title of the last page of a night when another night follows. %1 is the number of the night.</extracomment>
        <translation>Nacht %1 ist gespeichert</translation>
    </message>
    <message id="finished.next.body">
        <source>Keep the kit and the tablet here for the next night.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Lassen Sie das Set und das Tablet für die nächste Nacht hier.</translation>
    </message>
    <message id="finished.next.charge">
        <source>Charge the recorder today, so that it is ready tonight.</source>
        <extracomment>Under that, when the kit has a charger for the recorder.</extracomment>
        <translation>Laden Sie den Rekorder heute auf, damit er heute Abend bereit ist.</translation>
    </message>
    <message id="finished.next.main">
        <source>Begin the next night</source>
        <extracomment>Large button on that page: opens the first page of the next night.</extracomment>
        <translation>Nächste Nacht beginnen</translation>
    </message>
    <message id="desk.problem.no_print_answer">
        <source>The print service does not answer as it should. Try once more, or save the sheet as a PDF.</source>
        <extracomment>Printing.</extracomment>
        <translation>Der Druckdienst antwortet nicht richtig. Noch einmal versuchen oder das Blatt als PDF speichern.</translation>
    </message>
    <message id="desk.problem.no_job">
        <source>The print service no longer knows of the sheet. Look at the printer.</source>
        <extracomment>After printing: the print service has forgotten the job.</extracomment>
        <translation>Der Druckdienst weiß nichts mehr von dem Blatt. Am Drucker nachsehen.</translation>
    </message>
    <message id="desk.problem.print_not_loaded">
        <source>What makes and prints the sheet could not be loaded. Tell who set up this tablet.</source>
        <extracomment>The part of the program that makes the sheet is missing.</extracomment>
        <translation>Was das Blatt erstellt und druckt, konnte nicht geladen werden. Bitte denen sagen, die das Tablet eingerichtet haben.</translation>
    </message>
    <message id="desk.print.look">
        <source>Look for printers again</source>
        <extracomment>Button, where no printer can be used: asks the print service once more.</extracomment>
        <translation>Noch einmal nach Druckern suchen</translation>
    </message>
    <message id="desk.printer_says">
        <source>%1: %2</source>
        <extracomment>A printer and what it says of itself, such as &quot;Front desk: the paper is out&quot;; %1 its name, %2 one or more of desk.printer...</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message id="desk.printer_stopped">
        <source>%1 – stopped: %2</source>
        <extracomment>In the list of printers; %1 its name, %2 why.</extracomment>
        <translation>%1 – angehalten: %2</translation>
    </message>
    <message id="desk.printer_closed">
        <source>%1 – takes no jobs</source>
        <extracomment>In the list of printers; %1 its name.</extracomment>
        <translation>%1 – nimmt nichts an</translation>
    </message>
    <message id="desk.job.waiting">
        <source>The sheet waits at %1.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation>Das Blatt wartet bei %1.</translation>
    </message>
    <message id="desk.job.held">
        <source>The print service holds the sheet back at %1.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation>Der Druckdienst hält das Blatt bei %1 zurück.</translation>
    </message>
    <message id="desk.job.printing">
        <source>%1 is printing.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation>%1 druckt.</translation>
    </message>
    <message id="desk.job.stopped">
        <source>%1 has stopped in the middle of the sheet.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation>%1 hat mitten im Blatt angehalten.</translation>
    </message>
    <message id="desk.job.printed">
        <source>All of the sheet has gone to %1.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation>Das ganze Blatt ist bei %1.</translation>
    </message>
    <message id="desk.job.cancelled">
        <source>Somebody has cancelled the sheet at %1. What is missing is not printed.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation>Jemand hat das Blatt bei %1 abgebrochen. Was fehlt, wird nicht gedruckt.</translation>
    </message>
    <message id="desk.job.aborted">
        <source>The print service has given up the sheet at %1. Print it again, or save it as a PDF.</source>
        <extracomment>Above the page: how far a sheet is that was sent to a printer; %1 its name.</extracomment>
        <translation>Der Druckdienst hat das Blatt bei %1 aufgegeben. Noch einmal drucken oder als PDF speichern.</translation>
    </message>
    <message id="desk.printer.media-empty">
        <source>the paper is out</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>kein Papier mehr</translation>
    </message>
    <message id="desk.printer.media-needed">
        <source>it waits for paper</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>wartet auf Papier</translation>
    </message>
    <message id="desk.printer.media-low">
        <source>little paper is left</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>nur noch wenig Papier</translation>
    </message>
    <message id="desk.printer.media-jam">
        <source>paper is stuck in it</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>Papier steckt fest</translation>
    </message>
    <message id="desk.printer.input-tray-missing">
        <source>the paper tray is not in</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>das Papierfach fehlt</translation>
    </message>
    <message id="desk.printer.output-area-full">
        <source>its output tray is full</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>das Ausgabefach ist voll</translation>
    </message>
    <message id="desk.printer.door-open">
        <source>a door is open</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>eine Klappe ist offen</translation>
    </message>
    <message id="desk.printer.cover-open">
        <source>a cover is open</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>ein Deckel ist offen</translation>
    </message>
    <message id="desk.printer.interlock-open">
        <source>something of it is open</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>etwas an ihm ist offen</translation>
    </message>
    <message id="desk.printer.toner-empty">
        <source>the toner is used up</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>der Toner ist leer</translation>
    </message>
    <message id="desk.printer.toner-low">
        <source>little toner is left</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>nur noch wenig Toner</translation>
    </message>
    <message id="desk.printer.marker-supply-empty">
        <source>the ink is used up</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>die Tinte ist leer</translation>
    </message>
    <message id="desk.printer.marker-supply-low">
        <source>little ink is left</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>nur noch wenig Tinte</translation>
    </message>
    <message id="desk.printer.paused">
        <source>somebody has paused it</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>jemand hat ihn angehalten</translation>
    </message>
    <message id="desk.printer.offline">
        <source>it cannot be reached</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>er ist nicht erreichbar</translation>
    </message>
    <message id="desk.printer.connecting-to-device">
        <source>it is being reached for</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>die Verbindung wird aufgebaut</translation>
    </message>
    <message id="desk.printer.timed-out">
        <source>it does not answer</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>er antwortet nicht</translation>
    </message>
    <message id="desk.printer.shutdown">
        <source>it is switched off</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>er ist ausgeschaltet</translation>
    </message>
    <message id="desk.printer.spool-area-full">
        <source>the print service has no room</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>der Druckdienst hat keinen Platz</translation>
    </message>
    <message id="desk.printer.other">
        <source>it does not say why</source>
        <extracomment>What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.</extracomment>
        <translation>er sagt nicht, warum</translation>
    </message>
    <message id="desk.print.length">
        <source>Length</source>
        <extracomment>Label of a choice: how much the sheet says.</extracomment>
        <translation>Länge</translation>
    </message>
    <message id="desk.print.short">
        <source>short</source>
        <extracomment>One of two: the figures and titles of the steps, on one leaf.</extracomment>
        <translation>kurz</translation>
    </message>
    <message id="desk.print.full">
        <source>full</source>
        <extracomment>One of two: every text of every step.</extracomment>
        <translation>vollständig</translation>
    </message>
    <message id="sheet.brief.first.title">
        <source>Call your clinic first if one of these is true</source>
        <extracomment>Short sheet, title of a box: the questions of the first page in short. Each yes means: call.</extracomment>
        <translation>Erst Ihre Klinik anrufen, wenn etwas davon zutrifft</translation>
    </message>
    <message id="sheet.brief.first">
        <source>Allergy to tape or latex. Sore or broken skin. Pacemaker or implant. Oxygen or a breathing machine. Pregnant or under 18. A small child or a confused person in your bed who could get caught in cords. Do not change your treatment on your own.</source>
        <extracomment>Short sheet, under that: what the clinic must know, each in a few words.</extracomment>
        <translation>Allergie gegen Pflaster oder Latex. Wunde oder verletzte Haut. Herzschrittmacher, Implantat. Sauerstoff, Atemgerät. Schwanger, unter 18. Kind oder verwirrter Mensch im Bett (kann sich in Kabeln verfangen). Behandlung nicht selbst ändern.</translation>
    </message>
    <message id="sheet.brief.belts">
        <source>Close a belt at the end of a breath out: 2 fingers fit under it.</source>
        <extracomment>Short sheet, over the steps: it holds for each belt. One line, at most 65 characters.</extracomment>
        <translation>Gurt nach dem Ausatmen schließen: 2 Finger passen darunter.</translation>
    </message>
    <message id="sheet.brief.plugs">
        <source>Each plug goes into the port with the same mark.</source>
        <oldsource>Each plug goes into the port with just as many ridges.</oldsource>
        <extracomment>Short sheet, over the steps: it holds for each plug. One line, at most 65 characters.</extracomment>
        <translation>Jeder Stecker passt in die Buchse mit der gleichen Markierung.</translation>
    </message>
    <message id="sheet.brief.tape">
        <source>Never on sore or broken skin, or if tape makes it itch, sore or red: call your clinic. Never around a hand or finger.</source>
        <extracomment>Short sheet: one caution for all steps with tape or pads; their numbers stand before it.</extracomment>
        <translation>Nie auf wunde oder verletzte Haut, nie bei Jucken oder Röte von Pflaster: Klinik anrufen. Nie um Hand oder Finger.</translation>
    </message>
    <message id="sheet.brief.tube">
        <source>Never lead the tube around your neck: down in front, under your chin and clothes. Not too tight: leave room to swallow.</source>
        <extracomment>Short sheet: one caution for all steps with the nose tube; their numbers stand before it.</extracomment>
        <translation>Den Schlauch nie um den Hals: vorn nach unten, unter Kinn und Kleidung. Nicht zu eng: Sie müssen schlucken können.</translation>
    </message>
    <message id="sheet.brief.cable">
        <source>No cable or tube around your neck: along your arm or under your clothes, with some slack. Keep children and pets away.</source>
        <extracomment>Short sheet: one caution for all steps with cables; their numbers stand before it.</extracomment>
        <translation>Kein Kabel, kein Schlauch um den Hals: am Arm entlang oder unter der Kleidung, etwas locker. Kinder und Tiere fernhalten.</translation>
    </message>
    <message id="sheet.brief.up">
        <source>Free the cables first, then walk. Then look at each part.</source>
        <extracomment>Short sheet: what to do when the person has to get up in the night.</extracomment>
        <translation>Erst Kabel frei, dann gehen. Dann Teile prüfen.</translation>
    </message>
    <message id="sheet.brief.off">
        <source>Put it back on as in its step. Then look at the light.</source>
        <extracomment>Short sheet: what to do when something came off in the night. &quot;Its step&quot; is the numbered step with the picture of that part.</extracomment>
        <translation>Anbringen wie in seinem Schritt. Lämpchen ansehen.</translation>
    </message>
    <message id="sheet.brief.light">
        <source>Push in each plug. Still wrong? Call %1, or keep the kit on and sleep.</source>
        <extracomment>Short sheet: what to do when the light looks wrong in the night. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>Jeden Stecker fest hineindrücken. Noch falsch? %1 anrufen. Oder Set anlassen und schlafen.</translation>
    </message>
    <message id="sheet.brief.skin">
        <source>Take that part off slowly and leave it off. Swollen face or hard to breathe? Call %1.</source>
        <extracomment>Short sheet: what to do when the skin itches or hurts. %1 is the local emergency number.</extracomment>
        <translation>Dieses Teil langsam abnehmen und weglassen. Gesicht geschwollen oder schwer zu atmen? %1 anrufen.</translation>
    </message>
    <message id="sheet.brief.stop">
        <source>Take the tape off slowly, then the rest. Call your clinic in the morning. Very ill? Call %1.</source>
        <extracomment>Short sheet: what to do when the person wants to stop. %1 is the local emergency number.</extracomment>
        <translation>Pflaster langsam abziehen, dann den Rest. Morgens die Klinik anrufen. Sehr krank? %1 anrufen.</translation>
    </message>
    <message id="sheet.brief.diary">
        <source>First fill in the paper diary. Keep the kit on.</source>
        <extracomment>Short sheet, beside the heading &quot;In the morning&quot;: before the kit comes off.</extracomment>
        <translation>Erst das Tagebuch ausfüllen. Set noch anlassen.</translation>
    </message>
    <message id="sheet.brief.watch">
        <source>It may take %1 seconds. Watch it for a while.</source>
        <extracomment>Short sheet, beside the heading &quot;The light on the recorder&quot;. %1 is a number of seconds. One line, at most 45 characters.</extracomment>
        <translation>Dauert bis %1 Sekunden. Lange hinsehen.</translation>
    </message>
    <message id="sheet.brief.check_plugs">
        <source>Push each plug in. Then look again.</source>
        <extracomment>Short sheet: what to do when the recorder&apos;s light shows that a plug is not in.</extracomment>
        <translation>Jeden Stecker hineindrücken. Wieder hinsehen.</translation>
    </message>
    <message id="sheet.brief.start_again">
        <source>Start it once more. Then look again.</source>
        <extracomment>Short sheet: what to do when the light shows that the recorder did not start.</extracomment>
        <translation>Noch einmal starten. Wieder hinsehen.</translation>
    </message>
    <message id="sheet.brief.tape_off">
        <source>Do not tear it off. It sticks hard? Wet it with warm water.</source>
        <extracomment>Short sheet: caution for taking off the tape; the number of that step stands before it. One line, at most 65 characters.</extracomment>
        <translation>Nicht reißen. Klebt es sehr fest? Mit warmem Wasser nass machen.</translation>
    </message>
    <message id="sheet.brief.look">
        <source>Look once more in 30 minutes. Still red, torn or blistered? Call %1. Do not rub or cover it.</source>
        <extracomment>Short sheet: after the kit is off; the number of that step stands before it. %1 is the clinic&apos;s phone number.</extracomment>
        <translation>In 30 Minuten noch einmal ansehen. Noch rot, Risse oder Blasen? %1 anrufen. Nicht reiben, nicht abdecken.</translation>
    </message>
    <message id="sheet.brief.pack">
        <source>Pack all that was in the bag, and this sheet with the diary.</source>
        <extracomment>Short sheet: packing.</extracomment>
        <translation>Alles einpacken, was in der Tasche war, und dieses Blatt mit Tagebuch.</translation>
    </message>
    <message id="sheet.brief.stays">
        <source>This need not come back: %1.</source>
        <extracomment>Short sheet, under that: a thing of the bag that is used up. %1 is its name, such as &quot;roll of tape&quot;.</extracomment>
        <translation>Das muss nicht zurück: %1.</translation>
    </message>
    <message id="sheet.plug">
        <source>Plug in the %1: %2</source>
        <oldsource>Plug in: %1 (%2)</oldsource>
        <extracomment>Sheet, title of a step: the plug of a part goes into its port. %1 is the part, such as &quot;waist belt&quot;, %2 the mark of plug and port, such as &quot;2 ridges&quot;. At most 45 characters.</extracomment>
        <translation>%1 einstecken: %2</translation>
    </message>
    <message id="mark.ridges.1">
        <source>1 ridge</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation>1 Rippe</translation>
    </message>
    <message id="mark.ridges.2">
        <source>2 ridges</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation>2 Rippen</translation>
    </message>
    <message id="mark.ridges.3">
        <source>3 ridges</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation>3 Rippen</translation>
    </message>
    <message id="mark.ridges.4">
        <source>4 ridges</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.</extracomment>
        <translation>4 Rippen</translation>
    </message>
    <message id="mark.dots.1">
        <source>1 dot</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation>1 Punkt</translation>
    </message>
    <message id="mark.dots.2">
        <source>2 dots</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation>2 Punkte</translation>
    </message>
    <message id="mark.dots.3">
        <source>3 dots</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation>3 Punkte</translation>
    </message>
    <message id="mark.dots.4">
        <source>4 dots</source>
        <extracomment>The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.</extracomment>
        <translation>4 Punkte</translation>
    </message>
    <message id="mistake.belt_twisted">
        <source>Not twisted</source>
        <extracomment>Beside a small picture with a cross, what not to do: a belt must not be twisted.</extracomment>
        <translation>Nicht verdreht</translation>
    </message>
    <message id="mistake.prongs_flipped">
        <source>Not with the prongs pointing down</source>
        <extracomment>Beside a small picture with a cross: the prongs of the nose tube must not point down.</extracomment>
        <translation>Nicht mit den Röhrchen nach unten</translation>
    </message>
    <message id="mistake.tube_front_neck">
        <source>Not around your neck</source>
        <extracomment>Beside a small picture with a cross: the tube must not be wound around the neck.</extracomment>
        <translation>Nicht um den Hals</translation>
    </message>
    <message id="mistake.probe_upside">
        <source>Not with the cable under your finger</source>
        <extracomment>Beside a small picture with a cross: the finger clip must not be on upside down, with its cable below the finger. The cable belongs on the side of the nail.</extracomment>
        <translation>Nicht mit dem Kabel unter dem Finger</translation>
    </message>
    <message id="mistake.probe_not_in">
        <source>Not with your finger half in</source>
        <extracomment>Beside a small picture with a cross: the finger must reach the end of the clip.</extracomment>
        <translation>Nicht mit halb eingestecktem Finger</translation>
    </message>
    <message id="mistake.cable_loose">
        <source>Not loose: the cable can catch</source>
        <extracomment>Beside a small picture with a cross: the cable without tape catches on things.</extracomment>
        <translation>Nicht lose: Das Kabel kann hängen bleiben</translation>
    </message>
    <message id="part.label.marked">
        <source>Now: %1 (%2)</source>
        <extracomment>The same line for a part with a mark on its plug. %1 is the part, %2 the mark, such as &quot;2 ridges&quot;.</extracomment>
        <translation>Jetzt: %1 (%2)</translation>
    </message>
    <message id="off.unplug.title">
        <source>Pull out the plugs</source>
        <extracomment>Title of a page: the plugs are pulled out of the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Die Stecker herausziehen</translation>
    </message>
    <message id="off.unplug.push.body">
        <source>Hold each plug, not its cable. Pull it straight out of the recorder.</source>
        <extracomment>Under that title, of plugs that were pushed in.</extracomment>
        <translation>Fassen Sie jeden Stecker an, nicht sein Kabel. Ziehen Sie ihn gerade aus dem Rekorder.</translation>
    </message>
    <message id="off.unplug.snap.body">
        <source>Hold each plug, not its cable. Press it on both sides and pull it out of the recorder.</source>
        <extracomment>Under the first of those titles, of plugs that snapped in: they are pressed on both sides to let go.</extracomment>
        <translation>Fassen Sie jeden Stecker an, nicht sein Kabel. Drücken Sie ihn an beiden Seiten und ziehen Sie ihn aus dem Rekorder.</translation>
    </message>
    <message id="off.unplug.twist.body">
        <source>Hold each plug, not its cable. Turn it to the left and pull it out of the recorder.</source>
        <extracomment>Under that title, when the kit has plugs that were turned in, clockwise.</extracomment>
        <translation>Fassen Sie jeden Stecker an, nicht sein Kabel. Drehen Sie ihn nach links und ziehen Sie ihn aus dem Rekorder.</translation>
    </message>
    <message id="off.untwist.title">
        <source>Turn the tube off the recorder</source>
        <extracomment>Title of a page: the end of the nose tube, which was turned on to the recorder in the evening, is turned off. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Schlauch vom Rekorder drehen</translation>
    </message>
    <message id="off.untwist.body">
        <source>Turn the ring of the tube to the left. Then pull the tube off the recorder.</source>
        <extracomment>Under that title. &quot;To the left&quot; is against the clock.</extracomment>
        <translation>Drehen Sie den Ring vom Schlauch nach links. Ziehen Sie dann den Schlauch vom Rekorder ab.</translation>
    </message>
    <message id="off.unsnap.title">
        <source>Pull the sensors off the belts</source>
        <extracomment>Title of a page: the small sensors, which snapped on to studs of the belts in the evening, are pulled off. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Sensoren von den Gurten ziehen</translation>
    </message>
    <message id="off.unsnap.body">
        <source>Hold the belt with 1 hand. Pull off the small sensor with the other.</source>
        <extracomment>Under that title.</extracomment>
        <translation>Halten Sie den Gurt mit 1 Hand. Ziehen Sie mit der anderen den kleinen Sensor ab.</translation>
    </message>
    <message id="off.unplug.other.title">
        <source>Pull out the other plugs</source>
        <extracomment>Title of a page: after the plugs that snapped in, the others are pulled out of the recorder. Next to a picture of it. At most 45 characters.</extracomment>
        <translation>Die anderen Stecker herausziehen</translation>
    </message>
</context>
</TS>
