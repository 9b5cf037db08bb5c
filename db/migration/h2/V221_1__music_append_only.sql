create trigger music_version_stays before update, delete on music_version
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger music_on_site_stays before update, delete on music_on_site
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger music_play_stays before update, delete on music_play
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger music_deadline_stays before update, delete on music_deadline
for each row call 'rimebook.audit.AppendOnlyTrigger';
create trigger music_deletion_stays before update, delete on music_deletion
for each row call 'rimebook.audit.AppendOnlyTrigger';
