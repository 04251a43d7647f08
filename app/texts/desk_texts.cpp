// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// English texts of the front desk, for the staff of a clinic.
// Only the translation tools read this list; nothing uses it when the program runs.
#include <QtCore/qglobal.h>

namespace {

[[maybe_unused]] const char* const texts[] = {
    //: Button on the first and the last page of a night, small: staff of the clinic open their
    //: part.
    //% "For clinic staff"
    QT_TRID_NOOP("desk.open"),
    //: Button on the page that asks for the PIN: back to the patient's pages.
    //% "Leave"
    QT_TRID_NOOP("desk.leave"),
    //: Button: back to the clinic's own part of the app.
    //% "Back to the front desk"
    QT_TRID_NOOP("desk.back"),
    //: Front desk: something is being done that takes a moment.
    //% "One moment ..."
    QT_TRID_NOOP("desk.busy"),
    //: Front desk, above a form: something in it is wrong.
    //% "Please look at the marked fields."
    QT_TRID_NOOP("desk.look_at_fields"),
    //: Front desk: its own settings file cannot be read.
    //% "The settings of the front desk cannot be read. Give them again under \"This "
    //% "tablet\"."
    QT_TRID_NOOP("desk.settings_damaged"),
    //: Page of a tablet on which no patient's visit is prepared.
    //% "This tablet is ready"
    QT_TRID_NOOP("ready.title"),
    //: The same page, below. The clinic prepares a visit first.
    //% "No visit is on it yet. The clinic makes one at the front desk."
    QT_TRID_NOOP("ready.body"),
    //: Staff have typed in a paper diary or changed a record; it is written.
    //% "The record is written"
    QT_TRID_NOOP("entered.title"),
    //: Below it. %1 is the name of the record's folder.
    //% "Its name is %1. It is on this tablet. Take it out at the front desk."
    QT_TRID_NOOP("entered.body"),
    //: Band above the questions while staff type in a paper diary. %1 study code, %2 number of
    //: the night.
    //% "From paper: %1, night %2"
    QT_TRID_NOOP("sitting.paper"),
    //: Band above the questions while staff change a record. %1 study code, %2 number of the
    //: night.
    //% "Change of the record: %1, night %2"
    QT_TRID_NOOP("sitting.amend"),
    //: Front desk, menu: make a new visit.
    //% "New visit"
    QT_TRID_NOOP("desk.section.form"),
    //: Front desk, menu: list of visits.
    //% "Visits"
    QT_TRID_NOOP("desk.section.visits"),
    //: Front desk, menu: list of kits.
    //% "Kits"
    QT_TRID_NOOP("desk.section.kits"),
    //: Front desk, menu: list of languages.
    //% "Languages"
    QT_TRID_NOOP("desk.section.languages"),
    //: Front desk, menu: clinic, clock and PIN of this tablet.
    //% "This tablet"
    QT_TRID_NOOP("desk.section.tablet"),
    //: Front desk, menu: lock it and give the tablet back to the patient's pages.
    //% "Lock and leave"
    QT_TRID_NOOP("desk.section.leave"),
    //: Title: staff choose the first PIN.
    //% "Choose a PIN for the front desk"
    QT_TRID_NOOP("desk.first_pin.title"),
    //: Below it.
    //% "The front desk is for clinic staff. The PIN keeps patients out of it. Only the "
    //% "clinic should know it."
    QT_TRID_NOOP("desk.first_pin.body"),
    //: Title: staff give the PIN.
    //% "Front desk"
    QT_TRID_NOOP("desk.pin.title"),
    //: Label of the field for the PIN.
    //% "PIN"
    QT_TRID_NOOP("desk.pin.field"),
    //: Label of the second field for a new PIN.
    //% "PIN once more"
    QT_TRID_NOOP("desk.pin.again"),
    //: Label of the field for the PIN so far.
    //% "PIN so far"
    QT_TRID_NOOP("desk.pin.old"),
    //: Label of the field for a new PIN.
    //% "New PIN"
    QT_TRID_NOOP("desk.pin.new"),
    //: Below the field.
    //% "6 digits or more"
    QT_TRID_NOOP("desk.pin.hint"),
    //: Button.
    //% "Use this PIN"
    QT_TRID_NOOP("desk.pin.set"),
    //: Button: opens the front desk.
    //% "Open"
    QT_TRID_NOOP("desk.pin.open"),
    //: Button and heading: the new PIN counts from now on.
    //% "Change the PIN"
    QT_TRID_NOOP("desk.pin.change"),
    //: Said after that.
    //% "The new PIN counts from now on."
    QT_TRID_NOOP("desk.pin.changed"),
    //: Said after a wrong PIN.
    //% "That is not the PIN."
    QT_TRID_NOOP("desk.pin.wrong"),
    //: Below the second field.
    //% "Not the same as above"
    QT_TRID_NOOP("desk.pin.differs"),
    //: Said when too many wrong PINs were given before.
    //% "Too many wrong PINs. Wait a while, then try again."
    QT_TRID_NOOP("desk.pin.not_now"),
    //: Too many wrong PINs. %1 seconds to wait, %2 how many were wrong.
    //% "Wrong PINs so far: %2. The next try is open in %1 seconds."
    QT_TRID_NOOP("desk.pin.wait"),
    //: The file with the PIN is damaged.
    //% "The file with the PIN is damaged. Nobody can open the front desk with it."
    QT_TRID_NOOP("desk.pin.damaged"),
    //: Button: opens the page that says what happens then.
    //% "PIN forgotten"
    QT_TRID_NOOP("desk.pin.forgotten"),
    //: Caution: what the PIN does not do.
    //% "The PIN locks this screen. It does not protect a stolen tablet: for that, the disk "
    //% "must be encrypted."
    QT_TRID_NOOP("desk.pin.limits"),
    //: Title: what happens when the PIN is given up.
    //% "The PIN is forgotten"
    QT_TRID_NOOP("desk.forgotten.title"),
    //: Below it.
    //% "A PIN cannot be read back. You can take the lock off. Then the front desk forgets "
    //% "the clinic, its settings, and every visit whose records are all safe elsewhere."
    QT_TRID_NOOP("desk.forgotten.body"),
    //: Caution on the same page.
    //% "A visit with something that is nowhere else stays: a night in it must not be lost."
    QT_TRID_NOOP("desk.forgotten.keeps"),
    //: Box to tick.
    //% "I am from the clinic, and I want this"
    QT_TRID_NOOP("desk.forgotten.sure"),
    //: Button.
    //% "Take the lock off"
    QT_TRID_NOOP("desk.forgotten.main"),
    //: Said when the box is not ticked.
    //% "Tick the box first."
    QT_TRID_NOOP("desk.forgotten.not_sure"),
    //: Said after that.
    //% "The lock is off. Choose a new PIN."
    QT_TRID_NOOP("desk.forgotten.done"),
    //: Title of the list.
    //% "Visits on this tablet"
    QT_TRID_NOOP("desk.visits.title"),
    //: In place of the list.
    //% "No visit is here."
    QT_TRID_NOOP("desk.visits.none"),
    //: Head of a column.
    //% "Study code"
    QT_TRID_NOOP("desk.col.code"),
    //: Head of a column: what is written on the bag of the kit.
    //% "Kit"
    QT_TRID_NOOP("desk.col.label"),
    //: Head of a column: how many nights.
    //% "Nights"
    QT_TRID_NOOP("desk.col.nights"),
    //: Head of a column, and label of a field: which night.
    //% "Night"
    QT_TRID_NOOP("desk.col.night"),
    //: Head of a column: how far it is.
    //% "State"
    QT_TRID_NOOP("desk.col.stand"),
    //: Head of a column: what the patient's notes say of the night.
    //% "From the notes"
    QT_TRID_NOOP("desk.col.notes"),
    //: Head of a column: date of the evening.
    //% "Evening"
    QT_TRID_NOOP("desk.col.evening"),
    //: Head of a column: minutes with all needed signals, three numbers.
    //% "Needed signals, min: least / likely / most"
    QT_TRID_NOOP("desk.col.needed"),
    //: Head of a column.
    //% "Record"
    QT_TRID_NOOP("desk.col.record"),
    //: Head of a column: date and time.
    //% "When"
    QT_TRID_NOOP("desk.col.when"),
    //: Head of a column.
    //% "Sensor"
    QT_TRID_NOOP("desk.col.sensor"),
    //: Head of a column of minutes.
    //% "At least, min"
    QT_TRID_NOOP("desk.col.at_least"),
    //: Head of a column of minutes.
    //% "Likely, min"
    QT_TRID_NOOP("desk.col.best_guess"),
    //: Head of a column of minutes.
    //% "At most, min"
    QT_TRID_NOOP("desk.col.at_most"),
    //: Head of a column: why time was lost.
    //% "Reason"
    QT_TRID_NOOP("desk.col.cause"),
    //: Head of a column of minutes: how long this lasted.
    //% "Lost, min"
    QT_TRID_NOOP("desk.col.off"),
    //: Head of a column of minutes: what the night would gain without this one reason.
    //% "Gain without it, min"
    QT_TRID_NOOP("desk.col.alone"),
    //: Head of a column.
    //% "Kit file"
    QT_TRID_NOOP("desk.col.kit"),
    //: Head of a column: number of parts.
    //% "Parts"
    QT_TRID_NOOP("desk.col.parts"),
    //: Head of a column: outcome of the check.
    //% "Check"
    QT_TRID_NOOP("desk.col.check"),
    //: Head of a column.
    //% "Where"
    QT_TRID_NOOP("desk.col.where"),
    //: Head of a column: step of putting the kit on.
    //% "Step"
    QT_TRID_NOOP("desk.col.step"),
    //: Head of a column: what the patient is told.
    //% "What to do"
    QT_TRID_NOOP("desk.col.what"),
    //: Head of a column: two letters.
    //% "Code"
    QT_TRID_NOOP("desk.col.code_of_language"),
    //: Head of a column.
    //% "Review"
    QT_TRID_NOOP("desk.col.review"),
    //: State of a visit.
    //% "prepared"
    QT_TRID_NOOP("desk.stand.prepared"),
    //: State of a visit; %1 is the number of the night.
    //% "night %1 is under way"
    QT_TRID_NOOP("desk.stand.under_way"),
    //: State of a visit between two nights; %1 is the number of the night.
    //% "night %1 has its record"
    QT_TRID_NOOP("desk.stand.between"),
    //: State of a visit.
    //% "all nights have records"
    QT_TRID_NOOP("desk.stand.recorded"),
    //: State of a visit that cannot be read.
    //% "cannot be read"
    QT_TRID_NOOP("desk.stand.unread"),
    //: State of the visit that the tablet shows at the bedside; %1 is one of the states.
    //% "on this tablet, %1"
    QT_TRID_NOOP("desk.stand.tonight"),
    //: From the notes, the night is likely long enough.
    //% "enough"
    QT_TRID_NOOP("desk.verdict.enough"),
    //: From the notes, the night is likely too short.
    //% "too short"
    QT_TRID_NOOP("desk.verdict.short"),
    //: From the notes it cannot be told.
    //% "borderline"
    QT_TRID_NOOP("desk.verdict.borderline"),
    //: The notes do not say.
    //% "not known"
    QT_TRID_NOOP("desk.verdict.unknown"),
    //: Answers contradict each other.
    //% "answers do not fit"
    QT_TRID_NOOP("desk.verdict.contradictory"),
    //: State of a record.
    //% "does not verify"
    QT_TRID_NOOP("desk.record.damaged"),
    //: State of a record: a copy is on a stick.
    //% "verified, taken out"
    QT_TRID_NOOP("desk.record.taken_out"),
    //: State of a record: no copy is anywhere else.
    //% "verified, only here"
    QT_TRID_NOOP("desk.record.only_here"),
    //: Instead of a date alone: the record was changed; %1 the date, %2 how many times.
    //% "%1, change %2"
    QT_TRID_NOOP("desk.record.amended"),
    //: Heading of a list.
    //% "Records"
    QT_TRID_NOOP("desk.records.heading"),
    //: In place of the list.
    //% "No record yet."
    QT_TRID_NOOP("desk.records.none"),
    //: Heading of a list.
    //% "Answers that do not fit"
    QT_TRID_NOOP("desk.contradictions.heading"),
    //: Heading of a table; %1 number of the night.
    //% "Minutes of each sensor, night %1, from the notes"
    QT_TRID_NOOP("desk.sensors.heading"),
    //: Heading of a table.
    //% "Why time was lost"
    QT_TRID_NOOP("desk.lost.heading"),
    //: In place of the table.
    //% "Nothing was lost, as far as the notes say."
    QT_TRID_NOOP("desk.lost.none"),
    //: Reason for lost time.
    //% "The recording began after lights out"
    QT_TRID_NOOP("desk.lost.late_start"),
    //: Reason for lost time.
    //% "The recording ended before lights on"
    QT_TRID_NOOP("desk.lost.early_end"),
    //: Title of one visit; %1 study code, %2 what is on the kit's bag.
    //% "%1, %2"
    QT_TRID_NOOP("desk.visit.title"),
    //: Below it; %1 state, %2 nights, %3 bed time, %4 language, %5 date.
    //% "State: %1. Nights: %2. Lights out at %3. %4. Due back %5."
    QT_TRID_NOOP("desk.visit.line"),
    //: Button: the tablet shows this visit at the bedside.
    //% "Put it on this tablet"
    QT_TRID_NOOP("desk.visit.tonight"),
    //: Said after that; %1 study code.
    //% "%1 is on this tablet. Lock the front desk, and hand it over."
    QT_TRID_NOOP("desk.visit.on_tablet"),
    //: Button: the night that was begun will not be finished; what is known of it is written.
    //% "Give up the night"
    QT_TRID_NOOP("desk.visit.give_up"),
    //: Said after that.
    //% "The night is marked as given up. What is known of it is in its record."
    QT_TRID_NOOP("desk.visit.given_up"),
    //: Caution on the page of one visit: the patient said so half an hour after the tape came
    //: off, when the record was written already.
    //% "Half an hour after the tape came off, the patient said that the skin was still sore."
    QT_TRID_NOOP("desk.visit.skin_sore"),
    //: Title of a form.
    //% "New visit"
    QT_TRID_NOOP("desk.form.title"),
    //: Button.
    //% "Make the visit"
    QT_TRID_NOOP("desk.form.main"),
    //: Said after that; %1 study code.
    //% "%1 is made."
    QT_TRID_NOOP("desk.form.made"),
    //: The same; the tablet shows it at the bedside now.
    //% "%1 is made, and is on this tablet."
    QT_TRID_NOOP("desk.form.made_tonight"),
    //: Label of a field. No name of a patient.
    //% "Study code"
    QT_TRID_NOOP("desk.field.code"),
    //: Below it.
    //% "No name, no date of birth"
    QT_TRID_NOOP("desk.field.code_hint"),
    //: Label of a choice.
    //% "Kit"
    QT_TRID_NOOP("desk.field.kit"),
    //: Label of a field.
    //% "Label on the bag"
    QT_TRID_NOOP("desk.field.kit_label"),
    //: Below it.
    //% "Such as Bag 12"
    QT_TRID_NOOP("desk.field.kit_label_hint"),
    //: Label of a field: number.
    //% "Nights"
    QT_TRID_NOOP("desk.field.nights"),
    //: Label of a choice.
    //% "Language"
    QT_TRID_NOOP("desk.field.language"),
    //: Label of a choice.
    //% "Writes with"
    QT_TRID_NOOP("desk.field.writing_hand"),
    //: One of two.
    //% "the right hand"
    QT_TRID_NOOP("desk.hand.right"),
    //: One of two.
    //% "the left hand"
    QT_TRID_NOOP("desk.hand.left"),
    //: Label of a field: planned time of lights out.
    //% "Lights out at"
    QT_TRID_NOOP("desk.field.bed_time"),
    //: Below it.
    //% "24 hours, such as 22:05"
    QT_TRID_NOOP("desk.field.bed_time_hint"),
    //: Label of a field: date.
    //% "Due back"
    QT_TRID_NOOP("desk.field.return_by"),
    //: Below a date.
    //% "Such as 2026-11-04"
    QT_TRID_NOOP("desk.date_hint"),
    //: Box to tick; %1 time, %2 date, %3 time zone.
    //% "The tablet says %1, %2, %3. That is right"
    QT_TRID_NOOP("desk.field.clock"),
    //: Box to tick: optional part of the evening.
    //% "With a check of the signals"
    QT_TRID_NOOP("desk.option.signal_check"),
    //: Box to tick: optional part of the evening.
    //% "With questions in the evening"
    QT_TRID_NOOP("desk.option.evening_questions"),
    //: Box to tick: optional part.
    //% "With the mirror (camera)"
    QT_TRID_NOOP("desk.option.mirror"),
    //: Box to tick: optional part.
    //% "With the voice"
    QT_TRID_NOOP("desk.option.narration"),
    //: Title and button: copy the records to a stick.
    //% "Take records out"
    QT_TRID_NOOP("desk.out.title"),
    //: Below the title.
    //% "Each record is copied, read back and checked on the stick."
    QT_TRID_NOOP("desk.out.body"),
    //: No stick is plugged in.
    //% "No stick is plugged in, or none that can be written."
    QT_TRID_NOOP("desk.out.no_stick"),
    //: Button.
    //% "Look again"
    QT_TRID_NOOP("desk.out.again"),
    //: Label of a choice.
    //% "Stick"
    QT_TRID_NOOP("desk.out.stick"),
    //: Button.
    //% "Copy all to the stick"
    QT_TRID_NOOP("desk.out.main"),
    //: Said when none is chosen.
    //% "Choose a stick first."
    QT_TRID_NOOP("desk.out.choose"),
    //: Said after that: it was unmounted.
    //% "All records are on the stick, and checked there. You can take the stick out now."
    QT_TRID_NOOP("desk.out.safe"),
    //: Said after that: it could not be unmounted.
    //% "All records are on the stick, and checked there. The system still has hold of it: "
    //% "eject it before you pull it out."
    QT_TRID_NOOP("desk.out.synced"),
    //: Title and button: removes the visit from the tablet.
    //% "Ready for the next patient"
    QT_TRID_NOOP("desk.wipe.title"),
    //: Below the title; %1 study code.
    //% "This removes %1 from the tablet: the visit, its journal and its records."
    QT_TRID_NOOP("desk.wipe.body"),
    //: Everything is safe elsewhere.
    //% "Every night has its record, and every record was taken out and checked."
    QT_TRID_NOOP("desk.wipe.safe"),
    //: Label of a field.
    //% "Reason why it may go"
    QT_TRID_NOOP("desk.wipe.reason"),
    //: Below it.
    //% "It is kept. Do not name the study code."
    QT_TRID_NOOP("desk.wipe.reason_hint"),
    //: Button.
    //% "Remove it for good"
    QT_TRID_NOOP("desk.wipe.main"),
    //: Said after that.
    //% "The visit is gone from this tablet."
    QT_TRID_NOOP("desk.wipe.done"),
    //: Caution: why it should not go.
    //% "A night was begun and has no record."
    QT_TRID_NOOP("desk.wipe.against.no_record"),
    //: Caution: why it should not go.
    //% "A record does not verify."
    QT_TRID_NOOP("desk.wipe.against.bad_record"),
    //: Caution: why it should not go.
    //% "A record is only on this tablet. Take it out first."
    QT_TRID_NOOP("desk.wipe.against.not_taken_out"),
    //: Caution: why it should not go.
    //% "The journal could not be read. A night may be in it."
    QT_TRID_NOOP("desk.wipe.against.journal_unread"),
    //: Caution: why it should not go.
    //% "Nothing was done with this visit yet."
    QT_TRID_NOOP("desk.wipe.against.nothing_done"),
    //: Title and button: change what a record says.
    //% "Change a record"
    QT_TRID_NOOP("desk.amend.title"),
    //: Below the title.
    //% "The record stays as it is. A new one is written beside it. It says who changed what,"
    //% " and why."
    QT_TRID_NOOP("desk.amend.body"),
    //: Button: opens the answers.
    //% "Open the answers"
    QT_TRID_NOOP("desk.amend.main"),
    //: Label of a field: who types.
    //% "Who you are"
    QT_TRID_NOOP("desk.who"),
    //: Below it.
    //% "Initials or your role"
    QT_TRID_NOOP("desk.who_hint"),
    //: Label of a field.
    //% "Reason"
    QT_TRID_NOOP("desk.why"),
    //: Below it.
    //% "Such as: the patient called and said so"
    QT_TRID_NOOP("desk.why_hint"),
    //: Title and button: staff type in what the patient wrote on paper.
    //% "Type in a paper diary"
    QT_TRID_NOOP("desk.paper.title"),
    //: Below the title.
    //% "The same questions as on the tablet. The record says that it came from paper."
    QT_TRID_NOOP("desk.paper.body"),
    //: Label of a field: date of the evening on which the night began.
    //% "Evening of"
    QT_TRID_NOOP("desk.paper.evening"),
    //: Button: opens the questions.
    //% "Open the questions"
    QT_TRID_NOOP("desk.paper.main"),
    //: Said after staff came back without writing anything.
    //% "No record was written."
    QT_TRID_NOOP("desk.sitting.nothing"),
    //: Said after a record was written; %1 its name.
    //% "Written: %1"
    QT_TRID_NOOP("desk.sitting.written"),
    //: Title and button: the take-home sheet.
    //% "Print the sheet"
    QT_TRID_NOOP("desk.print.title"),
    //: Title.
    //% "Kits"
    QT_TRID_NOOP("desk.kits.title"),
    //: Below the title.
    //% "Each kit file is checked as it is listed. Open one to see its walk-through."
    QT_TRID_NOOP("desk.kits.body"),
    //: Outcome of the check of a kit file.
    //% "fine"
    QT_TRID_NOOP("desk.kits.fine"),
    //: Outcome of the check of a kit file; %1 how many.
    //% "faults: %1"
    QT_TRID_NOOP("desk.kits.faults"),
    //: Where a kit file is.
    //% "on a stick"
    QT_TRID_NOOP("desk.kits.on_stick"),
    //: Where a kit file is.
    //% "on this tablet"
    QT_TRID_NOOP("desk.kits.on_tablet"),
    //: Title of one kit; %1 its name.
    //% "Kit %1"
    QT_TRID_NOOP("desk.kit.title"),
    //: Below it; %1 steps, %2 minutes, %3 strips of tape.
    //% "Steps: %1. Minutes: %2. Strips of tape: %3."
    QT_TRID_NOOP("desk.kit.line"),
    //: Button: copies the kit file from the stick.
    //% "Take it over into this tablet"
    QT_TRID_NOOP("desk.kit.take"),
    //: Said after that.
    //% "The kit is on this tablet now."
    QT_TRID_NOOP("desk.kit.taken"),
    //: Title.
    //% "Languages"
    QT_TRID_NOOP("desk.languages.title"),
    //: Below the title.
    //% "A language that no clinical translator has reviewed is for patients only with "
    //% "somebody at hand who speaks it."
    QT_TRID_NOOP("desk.languages.body"),
    //: State of a language.
    //% "source"
    QT_TRID_NOOP("desk.languages.source"),
    //: State of a language.
    //% "needs review by a clinical translator"
    QT_TRID_NOOP("desk.languages.unreviewed"),
    //: Label of a choice.
    //% "Language of the front desk"
    QT_TRID_NOOP("desk.languages.desk"),
    //: Button.
    //% "Use it"
    QT_TRID_NOOP("desk.languages.use"),
    //: Title.
    //% "This tablet"
    QT_TRID_NOOP("desk.tablet.title"),
    //: Label of a field: IANA time zone.
    //% "Time zone"
    QT_TRID_NOOP("desk.tablet.zone"),
    //: Below it; %1 time, %2 date.
    //% "There it is %1, %2"
    QT_TRID_NOOP("desk.tablet.now"),
    //: Button.
    //% "Save"
    QT_TRID_NOOP("desk.tablet.save"),
    //: Said after that.
    //% "Saved. New visits begin with this."
    QT_TRID_NOOP("desk.tablet.saved"),
    //: Heading of a form.
    //% "The clinic"
    QT_TRID_NOOP("desk.clinic.heading"),
    //: Label of a field.
    //% "Name of the clinic"
    QT_TRID_NOOP("desk.clinic.name"),
    //: Label of a field.
    //% "Phone"
    QT_TRID_NOOP("desk.clinic.phone"),
    //: Label of a field: when the phone is answered.
    //% "Hours"
    QT_TRID_NOOP("desk.clinic.hours"),
    //: Below it. Days are written in English in three letters.
    //% "Such as mon-fri 08:00-17:00, sat 09:00-12:00"
    QT_TRID_NOOP("desk.clinic.hours_hint"),
    //: Label of a field.
    //% "Phone outside hours"
    QT_TRID_NOOP("desk.clinic.phone_outside_hours"),
    //: Label of a field.
    //% "Emergency number"
    QT_TRID_NOOP("desk.clinic.emergency"),
    //: Something could not be written.
    //% "There is no room left. Nothing was lost; make room and try again."
    QT_TRID_NOOP("desk.problem.disk_full"),
    //: Something could not be written.
    //% "It cannot be written there: it is write-protected."
    QT_TRID_NOOP("desk.problem.read_only"),
    //: Something could not be written.
    //% "The folder or the stick is not there."
    QT_TRID_NOOP("desk.problem.no_place"),
    //: A journal is open in another copy of the program.
    //% "Another copy of the program has this open. Close that one first."
    QT_TRID_NOOP("desk.problem.second_copy"),
    //: Below the study code.
    //% "Letters, digits, - and _, at most 32, such as SM-0417"
    QT_TRID_NOOP("desk.problem.bad_code"),
    //: Below the study code.
    //% "There is a visit of this code. Take another one."
    QT_TRID_NOOP("desk.problem.visit_exists"),
    //: Below an empty field.
    //% "This is needed"
    QT_TRID_NOOP("desk.problem.missing"),
    //: Below a phone number.
    //% "This cannot be dialled. Right would be such as 555-0142"
    QT_TRID_NOOP("desk.problem.bad_phone"),
    //: Below a date.
    //% "No date. Right would be such as 2026-11-04"
    QT_TRID_NOOP("desk.problem.bad_date"),
    //: Below a time.
    //% "No time. Right would be such as 22:05"
    QT_TRID_NOOP("desk.problem.bad_time_of_day"),
    //: Below a number of nights, or of one night.
    //% "Right would be a number from 1 up to the nights of the visit, at most 14"
    QT_TRID_NOOP("desk.problem.bad_nights"),
    //: Below the hours of the clinic.
    //% "Right would be such as mon-fri 08:00-17:00, sat 09:00-12:00"
    QT_TRID_NOOP("desk.problem.bad_hours"),
    //: Below the time zone.
    //% "No such zone. Right would be such as America/New_York"
    QT_TRID_NOOP("desk.problem.unknown_zone"),
    //: Above the form of a new visit: a sheet without a number does not leave the desk.
    //% "The clinic's phone number is missing. Give it under \"This tablet\" first."
    QT_TRID_NOOP("desk.problem.no_phone"),
    //: Beside the clock in the form of a new visit.
    //% "Look at the clock and confirm it"
    QT_TRID_NOOP("desk.problem.clock_not_confirmed"),
    //: Below the reason.
    //% "A reason is needed"
    QT_TRID_NOOP("desk.problem.reason_missing"),
    //: Below the reason.
    //% "Leave the study code out: the reason is kept"
    QT_TRID_NOOP("desk.problem.reason_names_code"),
    //: A stick has another record of the same name.
    //% "Another record of that name is there already. It was not touched."
    QT_TRID_NOOP("desk.problem.record_exists"),
    //: Below a new PIN.
    //% "Right would be 6 to 64 digits"
    QT_TRID_NOOP("desk.problem.pin_form"),
    //: There is a PIN already.
    //% "There is a PIN already"
    QT_TRID_NOOP("desk.problem.pin_set"),
    //: Printing.
    //% "No print service answers on this tablet. Save the sheet as a PDF instead."
    QT_TRID_NOOP("desk.problem.no_print_service"),
    //: Printing.
    //% "No printer is set up. Save the sheet as a PDF instead."
    QT_TRID_NOOP("desk.problem.no_printer"),
    //: Printing.
    //% "The printer is stopped. Nothing was sent to it."
    QT_TRID_NOOP("desk.problem.printer_stopped"),
    //: Printing.
    //% "The printer takes no jobs. Nothing was printed."
    QT_TRID_NOOP("desk.problem.not_accepted"),
    //: Below the title; %1 how many pages.
    //% "What will be printed, page by page: %1 pages."
    QT_TRID_NOOP("desk.print.body"),
    //: Label of a choice.
    //% "Paper"
    QT_TRID_NOOP("desk.print.paper"),
    //: Label of a choice: size of the letters.
    //% "Letters"
    QT_TRID_NOOP("desk.print.size"),
    //: One of two.
    //% "normal"
    QT_TRID_NOOP("desk.print.normal"),
    //: One of two.
    //% "large"
    QT_TRID_NOOP("desk.print.large"),
    //: Label of a choice: how much the sheet says.
    //% "Length"
    QT_TRID_NOOP("desk.print.length"),
    //: One of two: the figures and titles of the steps, on one leaf.
    //% "short"
    QT_TRID_NOOP("desk.print.short"),
    //: One of two: every text of every step.
    //% "full"
    QT_TRID_NOOP("desk.print.full"),
    //: Label of a choice.
    //% "Printer"
    QT_TRID_NOOP("desk.print.printer"),
    //: Label of a choice: which page of the preview.
    //% "Page"
    QT_TRID_NOOP("desk.print.page"),
    //: Button.
    //% "Print"
    QT_TRID_NOOP("desk.print.main"),
    //: Button: the sheet as a PDF on the stick, or in the folder for documents.
    //% "Save as PDF"
    QT_TRID_NOOP("desk.print.save"),
    //: Said after that; %1 name of the printer.
    //% "Handed to %1."
    QT_TRID_NOOP("desk.print.sent"),
    //: Said after that; %1 name of the file.
    //% "Saved: %1"
    QT_TRID_NOOP("desk.print.saved"),
    //: For screen readers: a picture of one page of the sheet; %1 which.
    //% "Page %1 of the sheet"
    QT_TRID_NOOP("desk.print.picture"),
    //: Printing.
    //% "The print service does not answer as it should. Try once more, or save the sheet as a PDF."
    QT_TRID_NOOP("desk.problem.no_print_answer"),
    //: After printing: the print service has forgotten the job.
    //% "The print service no longer knows of the sheet. Look at the printer."
    QT_TRID_NOOP("desk.problem.no_job"),
    //: The part of the program that makes the sheet is missing.
    //% "What makes and prints the sheet could not be loaded. Tell who set up this tablet."
    QT_TRID_NOOP("desk.problem.print_not_loaded"),
    //: Button, where no printer can be used: asks the print service once more.
    //% "Look for printers again"
    QT_TRID_NOOP("desk.print.look"),
    //: A printer and what it says of itself, such as "Front desk: the paper is out"; %1 its name, %2 one or more of desk.printer...
    //% "%1: %2"
    QT_TRID_NOOP("desk.printer_says"),
    //: In the list of printers; %1 its name, %2 why.
    //% "%1 – stopped: %2"
    QT_TRID_NOOP("desk.printer_stopped"),
    //: In the list of printers; %1 its name.
    //% "%1 – takes no jobs"
    QT_TRID_NOOP("desk.printer_closed"),
    //: Above the page: how far a sheet is that was sent to a printer; %1 its name.
    //% "The sheet waits at %1."
    QT_TRID_NOOP("desk.job.waiting"),
    //: Above the page: how far a sheet is that was sent to a printer; %1 its name.
    //% "The print service holds the sheet back at %1."
    QT_TRID_NOOP("desk.job.held"),
    //: Above the page: how far a sheet is that was sent to a printer; %1 its name.
    //% "%1 is printing."
    QT_TRID_NOOP("desk.job.printing"),
    //: Above the page: how far a sheet is that was sent to a printer; %1 its name.
    //% "%1 has stopped in the middle of the sheet."
    QT_TRID_NOOP("desk.job.stopped"),
    //: Above the page: how far a sheet is that was sent to a printer; %1 its name.
    //% "All of the sheet has gone to %1."
    QT_TRID_NOOP("desk.job.printed"),
    //: Above the page: how far a sheet is that was sent to a printer; %1 its name.
    //% "Somebody has cancelled the sheet at %1. What is missing is not printed."
    QT_TRID_NOOP("desk.job.cancelled"),
    //: Above the page: how far a sheet is that was sent to a printer; %1 its name.
    //% "The print service has given up the sheet at %1. Print it again, or save it as a PDF."
    QT_TRID_NOOP("desk.job.aborted"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "the paper is out"
    QT_TRID_NOOP("desk.printer.media-empty"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "it waits for paper"
    QT_TRID_NOOP("desk.printer.media-needed"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "little paper is left"
    QT_TRID_NOOP("desk.printer.media-low"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "paper is stuck in it"
    QT_TRID_NOOP("desk.printer.media-jam"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "the paper tray is not in"
    QT_TRID_NOOP("desk.printer.input-tray-missing"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "its output tray is full"
    QT_TRID_NOOP("desk.printer.output-area-full"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "a door is open"
    QT_TRID_NOOP("desk.printer.door-open"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "a cover is open"
    QT_TRID_NOOP("desk.printer.cover-open"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "something of it is open"
    QT_TRID_NOOP("desk.printer.interlock-open"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "the toner is used up"
    QT_TRID_NOOP("desk.printer.toner-empty"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "little toner is left"
    QT_TRID_NOOP("desk.printer.toner-low"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "the ink is used up"
    QT_TRID_NOOP("desk.printer.marker-supply-empty"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "little ink is left"
    QT_TRID_NOOP("desk.printer.marker-supply-low"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "somebody has paused it"
    QT_TRID_NOOP("desk.printer.paused"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "it cannot be reached"
    QT_TRID_NOOP("desk.printer.offline"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "it is being reached for"
    QT_TRID_NOOP("desk.printer.connecting-to-device"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "it does not answer"
    QT_TRID_NOOP("desk.printer.timed-out"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "it is switched off"
    QT_TRID_NOOP("desk.printer.shutdown"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "the print service has no room"
    QT_TRID_NOOP("desk.printer.spool-area-full"),
    //: What a printer says of itself (printer-state-reasons of RFC 8011), after its name and a colon.
    //% "it does not say why"
    QT_TRID_NOOP("desk.printer.other"),
};

} // namespace
