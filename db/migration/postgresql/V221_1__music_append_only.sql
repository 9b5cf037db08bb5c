-- See V012: a key of a row to itself keeps the table from being emptied.
alter table music_version add constraint music_version_never_emptied foreign key (id) references music_version (id);
create trigger music_version_stays before update or delete or truncate on music_version
for each statement execute function refuse_rewriting();
alter table music_on_site add constraint music_on_site_never_emptied foreign key (id) references music_on_site (id);
create trigger music_on_site_stays before update or delete or truncate on music_on_site
for each statement execute function refuse_rewriting();
alter table music_play add constraint music_play_never_emptied foreign key (id) references music_play (id);
create trigger music_play_stays before update or delete or truncate on music_play
for each statement execute function refuse_rewriting();
alter table music_deadline add constraint music_deadline_never_emptied foreign key (id) references music_deadline (id);
create trigger music_deadline_stays before update or delete or truncate on music_deadline
for each statement execute function refuse_rewriting();
alter table music_deletion add constraint music_deletion_never_emptied foreign key (id) references music_deletion (id);
create trigger music_deletion_stays before update or delete or truncate on music_deletion
for each statement execute function refuse_rewriting();
