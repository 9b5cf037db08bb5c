create trigger called_list_stays before update, delete on called_list
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger points_card_stays before update, delete on points_card
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger deduction_list_stays before update, delete on deduction_list
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger list_authorisation_stays before update, delete on list_authorisation
for each row call 'rimebook.audit.AppendOnlyTrigger';

-- H2 asks no trigger before TRUNCATE; a key of a row to itself makes it refuse.
alter table called_list add constraint called_list_never_emptied
foreign key (id) references called_list (id);
alter table points_card add constraint points_card_never_emptied
foreign key (id) references points_card (id);
alter table deduction_list add constraint deduction_list_never_emptied
foreign key (id) references deduction_list (id);
alter table list_authorisation add constraint list_authorisation_never_emptied
foreign key (id) references list_authorisation (id);
